package org.firnline.learning.run;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.IceTable;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;

/**
 * Primary drying of one vessel that stores heat, on a grid of times that does not depend on what is
 * fitted, so that its answers change smoothly with the parameters. The same equations as {@code
 * drying.recipe}, which is its check.
 *
 * <p>Each step is linearly implicit in the temperature of the vessel, which may follow quickly, and
 * explicit in the dried depth; second order whatever the linearization.
 *
 * <p>Source: Rosenbrock method ROS2 of Verwer, Spee, Blom &amp; Hundsdorfer, SIAM J. Sci. Comput.
 * 20, 1456 (1999) (from memory); equations in docs/science.md.
 */
final class FixedStepDrying {

  private static final double GAMMA = 1 - Math.sqrt(0.5);
  private static final double FIRST_HOURS_S = 2 * 3600;
  private static final double SHORT_STEP_S = 120;
  private static final double LONG_STEP_S = 400;
  private static final double SLOPE_STEP_K = 0.01;

  /** The last of the layer conducts without bound; so much of it is left in the equations. */
  private static final double ALMOST_ALL = 1 - 1e-6;

  /** Nothing dries that has not dried in this many times the length of the readings. */
  private static final double PATIENCE = 20;

  private static final IceTable ICE = IceTable.shared();

  private final ProbedVessel observed;
  private final double[] times;
  private final double[] shelf;
  private final double[] pressure;

  private double front = 240;
  private double rate;

  /** Lays the grid: readings, bends of the schedule, and no step too long. */
  FixedStepDrying(ProbedVessel observed) {
    this.observed = observed;
    TreeSet<Double> marks = new TreeSet<>();
    marks.add(0.0);
    observed.readings().forEach(reading -> marks.add(reading.time()));
    double last = marks.last();
    for (double bend : observed.schedule().bends()) {
      if (bend > 0 && bend < last) {
        marks.add(bend);
      }
    }
    List<Double> grid = new ArrayList<>();
    double before = 0;
    for (double mark : marks) {
      double longest = before < FIRST_HOURS_S ? SHORT_STEP_S : LONG_STEP_S;
      int parts = (int) Math.max(1, Math.ceil((mark - before) / longest));
      for (int part = 1; part <= parts && mark > before; part++) {
        grid.add(part == parts ? mark : before + (mark - before) * part / parts);
      }
      before = mark;
    }
    for (double time = last; time < PATIENCE * last; ) {
      time += LONG_STEP_S;
      grid.add(time);
    }
    this.times = grid.stream().mapToDouble(Double::doubleValue).toArray();
    this.shelf = new double[times.length + 1];
    this.pressure = new double[times.length + 1];
    for (int i = 0; i <= times.length; i++) {
      double time = i == 0 ? 0 : times[i - 1];
      shelf[i] = observed.schedule().shelf().at(time);
      pressure[i] = observed.schedule().pressure().at(time);
    }
  }

  /** Bottom temperatures at the readings, K, then the end of ice, s. */
  double[] run(DryingVessel vessel, ShelfHeat heat) {
    Slab slab = observed.slab();
    double[] seen = new double[observed.readings().size() + 1];
    double depth = 0;
    double bottom = observed.productStart();
    double time = 0;
    int reading = 0;
    double end = Double.NaN;
    for (int i = 0; i < times.length && Double.isNaN(end); i++) {
      double step = times[i] - time;
      double slopeNow = slope(vessel, heat, i, depth, bottom);
      double speedNow = rate / slab.icePerDepth(depth);
      double jacobian =
          (slope(vessel, heat, i, depth, bottom + SLOPE_STEP_K) - slopeNow) / SLOPE_STEP_K;
      double implicit = 1 - GAMMA * step * Math.min(0, jacobian);
      double k1 = slopeNow / implicit;
      double slopeNext = slope(vessel, heat, i + 1, depth + step * speedNow, bottom + step * k1);
      double speedNext = rate / slab.icePerDepth(depth);
      double k2 = (slopeNext - 2 * k1) / implicit;
      double advance = step * (speedNow + speedNext) / 2;
      if (depth + advance >= slab.thickness()) {
        end = time + lastPart(slab.thickness() - depth, speedNow, speedNext, step);
      }
      depth += advance;
      bottom += step * (1.5 * k1 + 0.5 * k2);
      time = times[i];
      while (reading < observed.readings().size()
          && observed.readings().get(reading).time() <= time) {
        seen[reading++] = bottom;
      }
    }
    for (; reading < observed.readings().size(); reading++) {
      seen[reading] = bottom;
    }
    seen[seen.length - 1] = Double.isNaN(end) ? time : end;
    return seen;
  }

  /** Time in which a speed that changes evenly covers what is left. */
  private static double lastPart(double left, double now, double next, double step) {
    double change = (next - now) / step;
    double root = Math.sqrt(Math.max(0, now * now + 2 * change * left));
    return now + root > 0 ? 2 * left / (now + root) : step;
  }

  /** dT_b/dt, K/s; leaves the vapor rate behind. */
  private double slope(DryingVessel vessel, ShelfHeat heat, int at, double depth, double bottom_K) {
    Slab slab = observed.slab();
    double within = Math.min(depth, ALMOST_ALL * slab.thickness());
    double coldest = FastFront.coldest(pressure[at]);
    double conductance = 1 / slab.frozenResistance(within);
    double resistance = vessel.vaporResistance(within);
    if (bottom_K <= coldest) {
      front = bottom_K;
      rate = 0;
    } else {
      front =
          FastFront.temperature(resistance, conductance, bottom_K, pressure[at], coldest, front);
      rate = FastFront.rate(resistance, conductance, bottom_K, pressure[at], front);
    }
    double gained = slab.vesselArea() * heat.transfer().at(pressure[at]) * (shelf[at] - bottom_K);
    double capacity =
        observed.mass().vessel() + observed.mass().frozen() * (1 - within / slab.thickness());
    return (gained - ICE.specific(front) * rate) / capacity;
  }
}
