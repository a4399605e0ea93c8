package org.firnline.matter;

/**
 * Sublimation pressure of ordinary ice (Ih), the equation of reference here.
 *
 * <p>ln(p/p_t) = (1/θ) Σ a_i θ^b_i, with θ = T/T_t.
 *
 * <p>Valid: 50 K to 273.16 K.
 *
 * <p>Source: IAPWS R14-08(2011), equation 6; Wagner, Riethmann, Feistel &amp; Harvey, J. Phys.
 * Chem. Ref. Data 40, 043103 (2011). Accuracy: within 0.009 % of the full equations of state from 0
 * to −80 °C.
 */
public final class WagnerEtAl2011Ice implements IceVaporPressure {

  private static final double A1 = -0.212144006e2;
  private static final double A2 = 0.273203819e2;
  private static final double A3 = -0.610598130e1;
  private static final double B1 = 0.333333333e-2;
  private static final double B2 = 0.120666667e1;
  private static final double B3 = 0.170333333e1;

  private static final double LOWEST = 50;

  @Override
  public double pressure(double temperature_K) {
    requireValid(temperature_K);
    double theta = temperature_K / Water.TRIPLE_POINT_TEMPERATURE;
    double logTheta = Math.log(theta);
    double sum =
        A1 * Math.exp(B1 * logTheta) + A2 * Math.exp(B2 * logTheta) + A3 * Math.exp(B3 * logTheta);
    return Water.TRIPLE_POINT_PRESSURE * Math.exp(sum / theta);
  }

  @Override
  public double logarithmicSlope(double temperature_K) {
    requireValid(temperature_K);
    double theta = temperature_K / Water.TRIPLE_POINT_TEMPERATURE;
    double logTheta = Math.log(theta);
    double sum =
        A1 * (B1 - 1) * Math.exp(B1 * logTheta)
            + A2 * (B2 - 1) * Math.exp(B2 * logTheta)
            + A3 * (B3 - 1) * Math.exp(B3 * logTheta);
    return sum / (theta * theta * Water.TRIPLE_POINT_TEMPERATURE);
  }

  @Override
  public double lowestTemperature() {
    return LOWEST;
  }

  private static void requireValid(double temperature_K) {
    if (!(temperature_K >= LOWEST && temperature_K <= Water.TRIPLE_POINT_TEMPERATURE)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 50 to 273.16 K, where ice is described");
    }
  }
}
