package org.firnline.matter;

/**
 * Sublimation pressure of ice, an independent second opinion to {@link WagnerEtAl2011Ice}.
 *
 * <p>ln p = 9.550426 − 5723.265/T + 3.53068 ln T − 0.00728332 T, p in Pa.
 *
 * <p>Valid: 110 K to 273.16 K.
 *
 * <p>Source: Murphy &amp; Koop, Q. J. R. Meteorol. Soc. 131, 1539 (2005), equation 7. Accuracy:
 * within 0.064 % of IAPWS R14-08 from 0 to −80 °C.
 */
public final class MurphyKoop2005Ice implements IceVaporPressure {

  private static final double CONSTANT = 9.550426;
  private static final double PER_TEMPERATURE = -5723.265;
  private static final double LOGARITHMIC = 3.53068;
  private static final double LINEAR = -0.00728332;

  private static final double LOWEST = 110;

  @Override
  public double pressure(double temperature_K) {
    requireValid(temperature_K);
    return Math.exp(
        CONSTANT
            + PER_TEMPERATURE / temperature_K
            + LOGARITHMIC * Math.log(temperature_K)
            + LINEAR * temperature_K);
  }

  @Override
  public double logarithmicSlope(double temperature_K) {
    requireValid(temperature_K);
    return -PER_TEMPERATURE / (temperature_K * temperature_K)
        + LOGARITHMIC / temperature_K
        + LINEAR;
  }

  @Override
  public double lowestTemperature() {
    return LOWEST;
  }

  private static void requireValid(double temperature_K) {
    if (!(temperature_K >= LOWEST && temperature_K <= Water.TRIPLE_POINT_TEMPERATURE)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 110 to 273.16 K, where this form holds");
    }
  }
}
