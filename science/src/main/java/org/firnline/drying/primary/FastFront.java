package org.firnline.drying.primary;

import org.firnline.matter.Water;

/**
 * The balance of {@link QuasiSteadyFront} in plain numbers, for loops that ask for it millions of
 * times; the readable class is its test oracle.
 *
 * <p>Solves R̂ G (T* − T) = ΔH(T) (p_ice(T) − P_c). The left side falls straight and the right side
 * rises and bends upward, so the iteration cannot run away: from the cold side it steps over the
 * root once, from the warm side it comes down to it.
 *
 * <p>Valid and assumed as in {@link QuasiSteadyFront}; ice from {@link IceTable}.
 */
public final class FastFront {

  /**
   * A cubically converging step this small leaves about 1e-7 K; it shrinks with the gap between
   * source and front, from which the rate follows.
   */
  private static final double LAST_STEP_K = 0.02;

  /** Between a source and a front closer than this, heat loses too many digits to cancellation. */
  private static final double CLOSE_K = 0.1;

  private static final int MOST_ITERATIONS = 60;

  private static final IceTable ICE = IceTable.shared();

  private FastFront() {}

  /** The ice temperature in equilibrium with {@code pressure_Pa}, K; from the shared table. */
  public static double coldest(double pressure_Pa) {
    return ICE.saturationTemperature(pressure_Pa);
  }

  /**
   * The front temperature, K.
   *
   * @param resistance R̂ from the front to the chamber, Pa s/kg; 0 or more
   * @param conductance G from all sources to the front, W/K; 0 or more
   * @param source_K T* of those sources, above {@code coldest_K}
   * @param pressure_Pa chamber pressure, up to the triple point
   * @param coldest_K {@link #coldest} of that pressure
   * @param guess_K where to start, for instance the answer for a neighboring front
   * @return between {@code coldest_K} and the lesser of source and triple point
   */
  public static double temperature(
      double resistance,
      double conductance,
      double source_K,
      double pressure_Pa,
      double coldest_K,
      double guess_K) {
    double warmest = Math.min(source_K, Water.TRIPLE_POINT_TEMPERATURE);
    double coupling = resistance * conductance;
    if (Double.isInfinite(coupling)) {
      return warmest;
    }
    double front = Math.min(warmest, Math.max(coldest_K, guess_K));
    for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      double next = ICE.improved(front, coupling, source_K, pressure_Pa);
      next = Math.min(warmest, Math.max(coldest_K, next));
      double moved = Math.abs(next - front);
      front = next;
      if (moved <= LAST_STEP_K * Math.min(1, source_K - next)) {
        break;
      }
    }
    return front;
  }

  /**
   * Vapor leaving a front of {@code front_K}, kg/s. Heat and vapor tell the same rate; the one that
   * loses fewer digits to cancellation is taken.
   */
  public static double rate(
      double resistance, double conductance, double source_K, double pressure_Pa, double front_K) {
    double gap = source_K - front_K;
    if (gap < CLOSE_K && resistance > 0) {
      double drive = ICE.pressure(front_K) - pressure_Pa;
      if (drive > gap * ICE.slope(front_K)) {
        return drive / resistance;
      }
    }
    return Math.max(0, conductance * gap / ICE.specific(front_K));
  }
}
