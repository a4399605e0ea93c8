package org.firnline.matter;

/**
 * Saturation pressure of liquid water, also supercooled: the second opinion to {@link
 * WagnerPruss1993Liquid} above 0 °C and the equation of reference below.
 *
 * <p>ln p = 54.842763 − 6763.22/T − 4.210 ln T + 0.000367 T + tanh(0.0415 (T − 218.8)) (53.878 −
 * 1331.22/T − 9.44523 ln T + 0.014025 T), p in Pa.
 *
 * <p>Valid: 123 K to 332 K.
 *
 * <p>Source: Murphy &amp; Koop, Q. J. R. Meteorol. Soc. 131, 1539 (2005), equation 10 (coefficients
 * from memory, confirmed by published check values to all digits). Accuracy: within 0.05 % of IAPWS
 * above 0 °C.
 */
public final class MurphyKoop2005Liquid implements LiquidVaporPressure {

  private static final double LOWEST = 123;
  private static final double HIGHEST = 332;

  private static final double CONSTANT = 54.842763;
  private static final double PER_TEMPERATURE = -6763.22;
  private static final double LOGARITHMIC = -4.210;
  private static final double LINEAR = 0.000367;

  private static final double STEP_SLOPE = 0.0415;
  private static final double STEP_TEMPERATURE = 218.8;
  private static final double STEP_CONSTANT = 53.878;
  private static final double STEP_PER_TEMPERATURE = -1331.22;
  private static final double STEP_LOGARITHMIC = -9.44523;
  private static final double STEP_LINEAR = 0.014025;

  @Override
  public double pressure(double temperature_K) {
    if (!(temperature_K >= LOWEST && temperature_K <= HIGHEST)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 123 to 332 K, where this form holds");
    }
    double logarithm = Math.log(temperature_K);
    double step = Math.tanh(STEP_SLOPE * (temperature_K - STEP_TEMPERATURE));
    return Math.exp(
        CONSTANT
            + PER_TEMPERATURE / temperature_K
            + LOGARITHMIC * logarithm
            + LINEAR * temperature_K
            + step
                * (STEP_CONSTANT
                    + STEP_PER_TEMPERATURE / temperature_K
                    + STEP_LOGARITHMIC * logarithm
                    + STEP_LINEAR * temperature_K));
  }

  @Override
  public double lowestTemperature() {
    return LOWEST;
  }

  @Override
  public double highestTemperature() {
    return HIGHEST;
  }
}
