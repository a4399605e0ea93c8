package org.firnline.matter;

/**
 * Thermal conductivity of ice, k = 9.828 exp(−0.0057 T) W/(m K).
 *
 * <p>Valid: 60 K to 273.16 K, for solid ice without pores or solutes.
 *
 * <p>Source: Yen, CRREL Report 81-10 (1981). Accuracy: published values of the conductivity of ice
 * spread by 7 to 8 %; at 0 °C they run from 2.07 (this equation) to 2.24 W/(m K).
 */
public final class Yen1981Conductivity {

  /** Relative spread of published values around each other. */
  public static final double PUBLISHED_SPREAD = 0.08;

  private static final double PREFACTOR = 9.828;
  private static final double SLOPE = -0.0057;
  private static final double LOWEST = 60;

  /** Conductivity in W/(m K) at {@code temperature_K}. */
  public double at(double temperature_K) {
    if (!(temperature_K >= LOWEST && temperature_K <= Water.TRIPLE_POINT_TEMPERATURE)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 60 to 273.16 K, where this form holds");
    }
    return PREFACTOR * Math.exp(SLOPE * temperature_K);
  }
}
