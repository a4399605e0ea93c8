package org.firnline.drying.recipe;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.IceTable;

/**
 * A vessel that stores heat: C(ℓ) dT_b/dt = G_o (T* − T_b) − (ΔH ṁ − Q_top), C the share of the
 * vessel in contact and the frozen mass left, G_o the conductance from the source to the bottom.
 *
 * <p>The front follows the bottom at once: R_f (ΔH ṁ − Q_top) = T_b − T_i with R_f the resistance
 * of the frozen layer, which vanishes with it and divides nothing.
 *
 * <p>Assumes one temperature for all that stores heat, an error of about a third of the difference
 * between bottom and front in the frozen layer.
 */
final class TransientVessel implements VesselModel {

  private static final double ACCURACY = 1e-9;

  /** The last ice stores no heat; this share of the first capacity keeps the equation finite. */
  private static final double LEAST_CAPACITY = 1e-6;

  /**
   * Where nothing but frozen product hinders the vapor, the last of it, this share of the first
   * layer, is taken as no thinner: the equation stays finite and time is right to 1e-8.
   */
  private static final double LEAST_LAYER = 1e-4;

  private static final IceTable ICE = IceTable.shared();

  private final DryingVessel vessel;
  private final FrontGeometry geometry;
  private final HeatSource heat;
  private final Schedule schedule;
  private final ThermalMass mass;
  private final double productStart;
  private double end = Double.POSITIVE_INFINITY;

  private double front = 240;
  private double rate;
  private double fromTop;
  private double fromOutside;

  TransientVessel(
      DryingVessel vessel,
      HeatSource heat,
      Schedule schedule,
      ThermalMass mass,
      double productStart_K) {
    this.vessel = vessel;
    this.geometry = vessel.geometry();
    this.heat = heat;
    this.schedule = schedule;
    this.mass = mass;
    this.productStart = productStart_K;
  }

  @Override
  public double[] start() {
    return new double[] {0, productStart};
  }

  @Override
  public double[] tolerances() {
    return new double[] {ACCURACY * thickness(), ACCURACY};
  }

  @Override
  public double thickness() {
    return geometry.thickness();
  }

  @Override
  public void holdBefore(double time_s) {
    end = Math.nextDown(time_s);
  }

  @Override
  public void slopes(double at, double[] state, double[] slopes) {
    solve(at, state[0], state[1]);
    double depth = Math.min(state[0], thickness());
    double capacity = Math.max(mass.at(depth / thickness()), LEAST_CAPACITY * mass.at(0));
    slopes[0] = rate / geometry.icePerDepth(depth);
    slopes[1] = (fromOutside + fromTop - ICE.specific(front) * rate) / capacity;
  }

  @Override
  public ScheduledRun.Moment moment(double time_s, double[] state) {
    solve(time_s, state[0], state[1]);
    return new ScheduledRun.Moment(time_s, state[0], front, state[1], rate);
  }

  private void solve(double at, double depth_m, double bottom_K) {
    double time = Math.min(at, end);
    double depth = Math.max(0, Math.min(depth_m, thickness()));
    double pressure = schedule.pressure().at(time);
    double coldest = FastFront.coldest(pressure);
    HeatSupply supply = heat.at(schedule.shelf().at(time), pressure);
    double resistance = vessel.vaporResistance(depth);
    double within = 1 / layer(depth, resistance, coldest);
    double top = supply.above().conductance(geometry.surfaceArea(), depth);
    double source = mean(bottom_K, within, supply.above().temperature(), top);
    if (source <= coldest) {
      front = source;
      rate = 0;
    } else {
      front = FastFront.temperature(resistance, within + top, source, pressure, coldest, front);
      rate = FastFront.rate(resistance, within + top, source, pressure, front);
    }
    fromTop = top == 0 ? 0 : top * (supply.above().temperature() - front);
    fromOutside =
        geometry.outerConductance(supply.coefficient(), thickness())
            * (supply.temperature() - bottom_K);
  }

  private double layer(double depth_m, double resistance, double coldest_K) {
    double layer = geometry.frozenResistance(depth_m);
    double least = LEAST_LAYER * geometry.frozenResistance(0);
    double slope = ICE.pressure(coldest_K) * ICE.logarithmicSlope(coldest_K);
    boolean bare = resistance < slope * ICE.specific(coldest_K) * least;
    return bare ? Math.max(layer, least) : layer;
  }

  private static double mean(double bottom_K, double within, double top_K, double top) {
    return top == 0 || Double.isInfinite(within)
        ? bottom_K
        : (within * bottom_K + top * top_K) / (within + top);
  }
}
