package org.firnline.matter.vapor;

/**
 * Thermal conductivity of water vapor in the limit of zero density.
 *
 * <p>λ₀ = √(T/T_c) / Σ L_i (T_c/T)^i, in mW/(m K).
 *
 * <p>Valid: 273.16 K to 1173 K; extrapolated smoothly down to 230 K (about 3 %). It is the
 * continuum value: in gaps thinner than the mean free path a gas conducts less.
 *
 * <p>Source: IAPWS R15-11, dilute-gas term; Huber et al., J. Phys. Chem. Ref. Data 41, 033102
 * (2012) (coefficients from memory, confirmed by a published check value to nine digits).
 */
public final class HuberEtAl2012Conductivity {

  private static final double CRITICAL_TEMPERATURE = 647.096;
  private static final double COLDEST = 200;
  private static final double WARMEST = 1173.15;

  private static final double L0 = 2.443221e-3;
  private static final double L1 = 1.323095e-2;
  private static final double L2 = 6.770357e-3;
  private static final double L3 = -3.454586e-3;
  private static final double L4 = 4.096266e-4;

  private static final double MILLIWATT = 1e-3;

  /** Conductivity in W/(m K) at {@code temperature_K}. */
  public double at(double temperature_K) {
    if (!(temperature_K >= COLDEST && temperature_K <= WARMEST)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 200 to 1173 K, where this form holds");
    }
    double reduced = temperature_K / CRITICAL_TEMPERATURE;
    double sum = L0 + (L1 + (L2 + (L3 + L4 / reduced) / reduced) / reduced) / reduced;
    return MILLIWATT * Math.sqrt(reduced) / sum;
  }
}
