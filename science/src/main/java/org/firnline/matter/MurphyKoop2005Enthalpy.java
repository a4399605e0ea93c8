package org.firnline.matter;

/**
 * Enthalpy of sublimation of ice.
 *
 * <p>L = 46782.5 + 35.8925 T − 0.07414 T² + 541.5 exp(−(T/123.75)²), in J/mol.
 *
 * <p>Valid: 30 K to 273.16 K.
 *
 * <p>Source: Murphy &amp; Koop, Q. J. R. Meteorol. Soc. 131, 1539 (2005), equation 5. Accuracy:
 * 0.005 to 0.011 % below the IAPWS equations of state from 0 to −80 °C.
 */
public final class MurphyKoop2005Enthalpy implements SublimationEnthalpy {

  private static final double CONSTANT = 46_782.5;
  private static final double LINEAR = 35.8925;
  private static final double QUADRATIC = -0.07414;
  private static final double BUMP = 541.5;
  private static final double BUMP_WIDTH = 123.75;

  /** Molar enthalpy of sublimation in J/mol at {@code temperature_K}. */
  public double molar(double temperature_K) {
    double scaled = temperature_K / BUMP_WIDTH;
    return CONSTANT
        + temperature_K * (LINEAR + QUADRATIC * temperature_K)
        + BUMP * Math.exp(-scaled * scaled);
  }

  @Override
  public double specific(double temperature_K) {
    return molar(temperature_K) / Water.MOLAR_MASS;
  }
}
