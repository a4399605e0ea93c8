package org.firnline.drying.pressurerise;

/**
 * The printed equation of manometric temperature measurement, with the warming of the ice:
 *
 * <p>P(t) = P_i − (P_i − P_0) e^(−kt) + c P_i ΔT (1 − (8/π²) e^(−(π²a/L²) t)) + X t.
 *
 * <p>c is half of d(ln p)/dT; prints of 0.465 are a decimal slip for 0.0465 per kelvin. L is
 * squared, which some prints omit.
 *
 * <p>Source: Milton, Pikal, Roy &amp; Nail, PDA J. Pharm. Sci. Technol. 51, 7 (1997) (title found,
 * equation from memory).
 *
 * @param rise the isothermal part; its leak enters as X t
 * @param warming ΔT between front and bottom of the ice, K; 0 or more
 * @param layer L, frozen depth left, m; positive
 */
public record ManometricEquation1997(PressureRise rise, double warming, double layer) {

  /** Half of d(ln p)/dT of ice near −25 °C, 1/K. Source: printed, from memory. */
  private static final double HALF_SLOPE = 0.0465;

  /** π² times the thermal diffusivity of ice, 0.114 cm²/s. Source: printed, from memory. */
  private static final double DIFFUSIVITY = 0.114e-4;

  private static final double FIRST_MODE = 8 / (Math.PI * Math.PI);

  /** Chamber pressure {@code time_s} after the valve shut, Pa. */
  public double at(double time_s) {
    double ice = rise.frontPressure();
    double isothermal =
        ice - (ice - rise.startPressure()) * Math.exp(-rise.rate() * time_s) + rise.leak() * time_s;
    double settled = 1 - FIRST_MODE * Math.exp(-DIFFUSIVITY / (layer * layer) * time_s);
    return isothermal + HALF_SLOPE * ice * warming * settled;
  }
}
