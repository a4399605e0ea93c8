package org.firnline.matter;

/**
 * Saturation pressure of liquid water, the equation of reference here.
 *
 * <p>ln(p/p_c) = (T_c/T) Σ a_i ϑ^e_i, with ϑ = 1 − T/T_c.
 *
 * <p>Valid: 0 °C to 647.096 K. Below, use {@link MurphyKoop2005Liquid}.
 *
 * <p>Source: IAPWS SR1-86(1992); Wagner &amp; Pruss, J. Phys. Chem. Ref. Data 22, 783 (1993).
 * Accuracy: within 0.01 % of IAPWS-95 up to 450 K.
 */
public final class WagnerPruss1993Liquid implements LiquidVaporPressure {

  private static final double CRITICAL_TEMPERATURE = 647.096;
  private static final double CRITICAL_PRESSURE = 22.064e6;

  private static final double A1 = -7.85951783;
  private static final double A2 = 1.84408259;
  private static final double A3 = -11.7866497;
  private static final double A4 = 22.6807411;
  private static final double A5 = -15.9618719;
  private static final double A6 = 1.80122502;

  @Override
  public double pressure(double temperature_K) {
    if (!(temperature_K >= lowestTemperature() && temperature_K <= CRITICAL_TEMPERATURE)) {
      throw new IllegalArgumentException(
          "temperature "
              + temperature_K
              + " K is outside 0 °C to 647.096 K, where liquid water is described");
    }
    double theta = 1 - temperature_K / CRITICAL_TEMPERATURE;
    double root = Math.sqrt(theta);
    double cube = theta * theta * theta;
    double sum =
        theta * (A1 + A2 * root)
            + cube * (A3 + A4 * root)
            + cube * theta * A5
            + cube * cube * theta * root * A6;
    return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / temperature_K * sum);
  }

  /** Just below the triple point, so that 0 °C belongs to the liquid. */
  @Override
  public double lowestTemperature() {
    return Water.TRIPLE_POINT_TEMPERATURE - 0.011;
  }

  @Override
  public double highestTemperature() {
    return CRITICAL_TEMPERATURE;
  }
}
