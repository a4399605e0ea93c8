package org.firnline.matter.vapor;

/**
 * Viscosity of water vapor in the limit of zero density, which holds in a freeze-dryer.
 *
 * <p>η₀ = 100 √(T/T_c) / Σ H_i (T_c/T)^i, in µPa s.
 *
 * <p>Valid: 273.16 K to 1173 K; extrapolated smoothly down to 230 K (about 1 %).
 *
 * <p>Source: IAPWS R12-08, dilute-gas term; Huber et al., J. Phys. Chem. Ref. Data 38, 101 (2009).
 */
public final class HuberEtAl2009Viscosity {

  private static final double CRITICAL_TEMPERATURE = 647.096;
  private static final double COLDEST = 200;
  private static final double WARMEST = 1173.15;

  private static final double H0 = 1.67752;
  private static final double H1 = 2.20462;
  private static final double H2 = 0.6366564;
  private static final double H3 = -0.241605;

  /** The numerator 100 is in µPa s. */
  private static final double NUMERATOR = 100e-6;

  /** Viscosity in Pa s at {@code temperature_K}. */
  public double at(double temperature_K) {
    if (!(temperature_K >= COLDEST && temperature_K <= WARMEST)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 200 to 1173 K, where this form holds");
    }
    double reduced = temperature_K / CRITICAL_TEMPERATURE;
    double sum = H0 + (H1 + (H2 + H3 / reduced) / reduced) / reduced;
    return NUMERATOR * Math.sqrt(reduced) / sum;
  }
}
