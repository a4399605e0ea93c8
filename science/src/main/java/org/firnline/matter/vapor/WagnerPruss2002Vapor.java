package org.firnline.matter.vapor;

/**
 * Heat capacity of water vapor as an ideal gas, and its ratio γ = c_p/c_v.
 *
 * <p>c_p/R = 1 + 3.00632 + Σ n_i (u_i)² e^{−u_i}/(1 − e^{−u_i})², u_i = γ_i T_c/T.
 *
 * <p>Valid: 130 K to 1273 K.
 *
 * <p>Source: ideal-gas part of IAPWS R6-95; Wagner &amp; Pruss, J. Phys. Chem. Ref. Data 31, 387
 * (2002), table 6.1 (coefficients from memory, confirmed by check values of γ to five digits).
 */
public final class WagnerPruss2002Vapor {

  private static final double CRITICAL_TEMPERATURE = 647.096;
  private static final double COLDEST = 130;
  private static final double WARMEST = 1273;

  /** Translation, rotation and the work of expansion, in units of R. */
  private static final double RIGID = 1 + 3.00632;

  private static final double[] WEIGHTS = {0.012436, 0.97315, 1.27950, 0.96956, 0.24873};
  private static final double[] FREQUENCIES = {
    1.28728967, 3.53734222, 7.74073708, 9.24437796, 27.5075105
  };

  /** Heat capacity at constant pressure in units of the gas constant, at {@code temperature_K}. */
  public double reducedHeatCapacity(double temperature_K) {
    if (!(temperature_K >= COLDEST && temperature_K <= WARMEST)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 130 to 1273 K, where this form holds");
    }
    double sum = RIGID;
    for (int mode = 0; mode < WEIGHTS.length; mode++) {
      double u = FREQUENCIES[mode] * CRITICAL_TEMPERATURE / temperature_K;
      double half = Math.sinh(u / 2);
      sum += WEIGHTS[mode] * u * u / (4 * half * half);
    }
    return sum;
  }

  /** Heat-capacity ratio γ at {@code temperature_K}. */
  public double heatCapacityRatio(double temperature_K) {
    double reduced = reducedHeatCapacity(temperature_K);
    return reduced / (reduced - 1);
  }
}
