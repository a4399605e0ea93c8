package org.firnline.drying.pressurerise;

import org.firnline.matter.Water;

/**
 * Pressure in a chamber whose vapor no longer leaves, with fronts that keep their temperature:
 * dP/dt = k (P_i − P) + X, so P = P_i + X/k − (P_i + X/k − P_0) e^(−kt).
 *
 * <p>k = N R_v T/(V R̂), N/R̂ the conductance of all vessels from front to chamber.
 *
 * <p>Valid: tests of seconds, in the first half to two thirds of primary drying. Warming of the ice
 * is left out; see {@link WarmingRise}.
 *
 * <p>Source: mass balance of the chamber; derivation in docs/science.md.
 *
 * @param frontPressure P_i, vapor pressure of the ice at the front, Pa; positive
 * @param startPressure P_0, Pa; positive
 * @param rate k, 1/s; positive
 * @param leak X, Pa/s; negative where a gauge drifts
 */
public record PressureRise(double frontPressure, double startPressure, double rate, double leak) {

  public PressureRise {
    if (!(frontPressure > 0) || !(startPressure > 0) || !(rate > 0) || !Double.isFinite(leak)) {
      throw new IllegalArgumentException(
          "front pressure, start pressure and rate must be positive, the leak finite");
    }
  }

  /**
   * k of a chamber, 1/s.
   *
   * @param vaporConductance of all vessels together, kg/(s Pa)
   * @param gas_K temperature of the gas
   * @param volume_m3 of the chamber
   */
  public static double rate(double vaporConductance, double gas_K, double volume_m3) {
    return vaporConductance * Water.VAPOR_GAS_CONSTANT * gas_K / volume_m3;
  }

  /** Chamber pressure {@code time_s} after the valve shut, Pa. */
  public double at(double time_s) {
    double end = frontPressure + leak / rate;
    return end - (end - startPressure) * Math.exp(-rate * time_s);
  }
}
