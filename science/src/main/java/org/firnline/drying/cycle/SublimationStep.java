package org.firnline.drying.cycle;

import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.IceTable;
import org.firnline.matter.Water;

/**
 * One frozen vessel over a step: C(ℓ) dT_b/dt = G (T* − T_b) − (ΔH ṁ − Q_top), with the front
 * following bottom (or wall) and the surface above at once.
 *
 * <p>First {@link #look}: rate and its slopes at the middle of the depth the step will dry. Then
 * {@link #advance}: exponential Rosenbrock step of order two in temperature, midpoint in depth; the
 * heat that comes in, the heat that sublimes and the heat that is stored balance to rounding. The
 * step in which the last ice goes is cut where it goes.
 *
 * <p>Source: Hochbruck, Ostermann &amp; Schweitzer, SIAM J. Numer. Anal. 47, 786 (2009) for the
 * exponential Rosenbrock–Euler rule (from memory).
 */
final class SublimationStep {

  private static final IceTable ICE = IceTable.shared();

  /** The last ice stores no heat; this share of the first capacity keeps the equation finite. */
  private static final double LEAST_CAPACITY = 1e-6;

  private final VesselArrays all;

  /** dṁ/dT_b, dT_i/dT_b and dṁ/dP of every vessel: kg/(s K), 1 and kg/(s Pa). */
  private final double[] perKelvin;

  private final double[] frontPerKelvin;
  private final double[] perPascal;
  private final double[] top;
  private final double[] topTemperature;

  SublimationStep(VesselArrays all) {
    this.all = all;
    this.perKelvin = new double[all.size];
    this.frontPerKelvin = new double[all.size];
    this.perPascal = new double[all.size];
    this.top = new double[all.size];
    this.topTemperature = new double[all.size];
  }

  double perPascal(int i) {
    return perPascal[i];
  }

  /**
   * Solves the front of vessel {@code i} at {@code pressure_Pa}, about to dry for a step.
   *
   * @param coldest_K ice in equilibrium with that pressure
   */
  void look(int i, double pressure_Pa, double coldest_K, double step_s, double shelf_K) {
    double start = all.depth[i];
    double ahead = start + step_s / 2 * all.rate[i] / all.icePerDepth(i, start);
    double depth = Math.min(all.thickness[i], ahead);
    double layer = all.layer(i, depth);
    double above = all.heat.top(i, depth);
    top[i] = above;
    topTemperature[i] = all.heat.topTemperature(i, shelf_K);
    double shared = 1 + above * layer;
    double source = (all.bottom[i] + above * layer * topTemperature[i]) / shared;
    if (pressure_Pa >= Water.TRIPLE_POINT_PRESSURE || source <= coldest_K) {
      all.rate[i] = 0;
      all.front[i] = source;
      perKelvin[i] = 0;
      perPascal[i] = 0;
      frontPerKelvin[i] = 1 / shared;
      return;
    }
    double resistance = all.vaporResistance(i, depth);
    double conductance = shared / layer;
    double front =
        FastFront.temperature(
            resistance, conductance, source, pressure_Pa, coldest_K, all.front[i]);
    all.front[i] = front;
    all.rate[i] = FastFront.rate(resistance, conductance, source, pressure_Pa, front);
    double slope = ICE.pressure(front) * ICE.logarithmicSlope(front);
    double stiffness = resistance * shared + slope * layer * ICE.specific(front);
    perKelvin[i] = stiffness == 0 ? 0 : slope / stiffness;
    perPascal[i] = stiffness == 0 ? 0 : -shared / stiffness;
    frontPerKelvin[i] = stiffness == 0 ? 1 : resistance / stiffness;
  }

  /**
   * Dries and warms vessel {@code i} for a step after {@link #look}.
   *
   * @param source_K T* of what warms it from outside
   * @param outer G from there, W/K
   * @param shift change of the pressure since then, Pa
   * @return heat that came in less heat that sublimed and was stored, J; 0 but for rounding
   */
  double advance(int i, double time_s, double step_s, double source_K, double outer, double shift) {
    double enthalpy = ICE.specific(all.front[i]);
    double rate = Math.max(0, all.rate[i] + perPascal[i] * shift);
    double capacity = capacity(i);
    double bottom = all.bottom[i];
    double fromTop = top[i] * (topTemperature[i] - all.front[i]);
    double net = outer * (source_K - bottom) + fromTop - enthalpy * rate;
    double topSlope = top[i] * frontPerKelvin[i];
    double decay = (outer + topSlope + enthalpy * perKelvin[i]) / capacity;
    double ending = Math.min(step_s, timeLeft(i, rate));
    double exponent = decay * ending;
    double warmed = net / capacity * ending * Relaxation.mean(exponent);
    double meanWarming = net / capacity * ending * Relaxation.meanOfMean(exponent);
    double mean = Math.max(0, rate + perKelvin[i] * meanWarming);
    all.bottom[i] = bottom + warmed;
    see(i, time_s + ending, mean > 0);
    dry(i, time_s, step_s, mean);
    double in =
        (outer * (source_K - bottom - meanWarming) + fromTop - topSlope * meanWarming) * ending;
    return in - enthalpy * (rate + perKelvin[i] * meanWarming) * ending - capacity * warmed;
  }

  private double capacity(int i) {
    double left = 1 - all.depth[i] / all.thickness[i];
    double glass = all.glassCapacity[i];
    double frozen = all.frozenCapacity[i];
    return Math.max(glass + frozen * left, LEAST_CAPACITY * (glass + frozen));
  }

  /** The limit counts once there is cake that could collapse. */
  private void see(int i, double time_s, boolean subliming) {
    double warmest = Math.max(all.front[i], all.bottom[i]);
    if (subliming) {
      all.records.warmestIce[i] = Math.max(all.records.warmestIce[i], warmest);
    }
    if (warmest > all.limit[i] && all.depth[i] > 0) {
      all.records.limitPassedAt[i] = Math.min(all.records.limitPassedAt[i], time_s);
    }
  }

  /** At the present rate; the last step of a shell takes its ice per depth at the middle. */
  private double timeLeft(int i, double rate) {
    return rate > 0 ? iceLeft(i) / rate : Double.POSITIVE_INFINITY;
  }

  private double iceLeft(int i) {
    double gap = all.thickness[i] - all.depth[i];
    return gap * all.icePerDepth(i, all.depth[i] + gap / 2);
  }

  /** Ice per depth at the middle of the way, which is exact for flat layers and for shells. */
  private void dry(int i, double time_s, double step_s, double rate) {
    all.rate[i] = rate;
    double gone = rate * step_s;
    double left = iceLeft(i);
    if (gone >= left) {
      all.records.endOfIce[i] = time_s + timeLeft(i, rate);
      all.rate[i] = left / step_s;
      all.depth[i] = all.thickness[i];
      all.stage[i] = VesselArrays.DRY;
    } else {
      all.depth[i] = all.depthAfter(i, gone);
    }
  }
}
