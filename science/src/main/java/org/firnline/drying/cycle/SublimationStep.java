package org.firnline.drying.cycle;

import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.IceTable;
import org.firnline.matter.Water;

/**
 * One frozen vessel over a step: C(ℓ) dT_b/dt = G (T* − T_b) − ΔH ṁ, with the front following the
 * bottom at once.
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

  /** dṁ/dT_b and dṁ/dP of every vessel, kg/(s K) and kg/(s Pa). */
  private final double[] perKelvin;

  private final double[] perPascal;

  SublimationStep(VesselArrays all) {
    this.all = all;
    this.perKelvin = new double[all.size];
    this.perPascal = new double[all.size];
  }

  double perPascal(int i) {
    return perPascal[i];
  }

  /** Solves the front of vessel {@code i} at {@code pressure_Pa}, about to dry for a step. */
  void look(int i, double pressure_Pa, double coldest_K, double step_s) {
    double bottom = all.bottom[i];
    if (pressure_Pa >= Water.TRIPLE_POINT_PRESSURE || bottom <= coldest_K) {
      all.rate[i] = 0;
      all.front[i] = bottom;
      perKelvin[i] = 0;
      perPascal[i] = 0;
      return;
    }
    double depth =
        Math.min(all.thickness[i], all.depth[i] + step_s / 2 * all.rate[i] / all.icePerDepth(i));
    double layer = (all.thickness[i] - depth) / (all.conductivity[i] * all.productArea[i]);
    double resistance = all.cake[i].at(depth) / all.productArea[i] + all.mouth[i];
    double front =
        FastFront.temperature(resistance, 1 / layer, bottom, pressure_Pa, coldest_K, all.front[i]);
    all.front[i] = front;
    all.rate[i] = FastFront.rate(resistance, 1 / layer, bottom, pressure_Pa, front);
    double slope = ICE.pressure(front) * ICE.logarithmicSlope(front);
    double stiffness = resistance + slope * layer * ICE.specific(front);
    perKelvin[i] = slope / stiffness;
    perPascal[i] = -1 / stiffness;
  }

  /**
   * Dries and warms vessel {@code i} for a step after {@link #look}.
   *
   * @param shift change of the pressure since then, Pa
   * @return heat that came in less heat that sublimed and was stored, J; 0 but for rounding
   */
  double advance(
      int i, double time_s, double step_s, double source_K, double conductance, double shift) {
    double enthalpy = ICE.specific(all.front[i]);
    double rate = Math.max(0, all.rate[i] + perPascal[i] * shift);
    double left = 1 - all.depth[i] / all.thickness[i];
    double capacity =
        Math.max(
            all.glassCapacity[i] + all.frozenCapacity[i] * left,
            LEAST_CAPACITY * (all.glassCapacity[i] + all.frozenCapacity[i]));
    double bottom = all.bottom[i];
    double net = conductance * (source_K - bottom) - enthalpy * rate;
    double decay = (conductance + enthalpy * perKelvin[i]) / capacity;
    double ending = Math.min(step_s, timeLeft(i, rate));
    double exponent = decay * ending;
    double first = Relaxation.mean(exponent);
    double second = Relaxation.meanOfMean(exponent);
    double warmed = net / capacity * ending * first;
    double meanWarming = net / capacity * ending * second;
    double mean = Math.max(0, rate + perKelvin[i] * meanWarming);
    all.bottom[i] = bottom + warmed;
    if (mean > 0) {
      all.warmestIce[i] = Math.max(all.warmestIce[i], Math.max(all.front[i], all.bottom[i]));
    }
    dry(i, time_s, step_s, mean);
    double in = conductance * (source_K - bottom - meanWarming) * ending;
    return in - enthalpy * (rate + perKelvin[i] * meanWarming) * ending - capacity * warmed;
  }

  private double timeLeft(int i, double rate) {
    double ice = (all.thickness[i] - all.depth[i]) * all.icePerDepth(i);
    return rate > 0 ? ice / rate : Double.POSITIVE_INFINITY;
  }

  private void dry(int i, double time_s, double step_s, double rate) {
    all.rate[i] = rate;
    double next = all.depth[i] + rate * step_s / all.icePerDepth(i);
    if (next >= all.thickness[i]) {
      all.endOfIce[i] = time_s + timeLeft(i, rate);
      all.rate[i] = (all.thickness[i] - all.depth[i]) * all.icePerDepth(i) / step_s;
      all.depth[i] = all.thickness[i];
      all.stage[i] = VesselArrays.DRY;
    } else {
      all.depth[i] = next;
    }
  }
}
