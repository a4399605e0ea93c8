package org.firnline.care;

import java.util.ArrayList;
import java.util.List;

/**
 * Cumulative sums of what lies more than an allowance above, or below, the usual mean: S⁺_t =
 * max(0, S⁺_{t−1} + y_t − mean − K), S⁻ likewise; a change is signaled beyond H. The last time a
 * sum was at zero before the signal estimates when the change began.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3 (from memory); time of change
 * after Page (1954).
 *
 * @param allowance K in the unit of the values; 0 or more
 * @param decision H in the unit of the values; positive
 */
public record Cusum(double allowance, double decision) {

  private static final double HALF_A_DEVIATION = 0.5;
  private static final double FIVE_DEVIATIONS = 5;

  public Cusum {
    if (!(allowance >= 0) || !(decision > 0)) {
      throw new IllegalArgumentException(
          "an allowance of " + allowance + " or a decision of " + decision);
    }
  }

  /** K = σ/2 and H = 5 σ: a change of one standard deviation shows after about ten values. */
  public static Cusum usual(double deviation) {
    return new Cusum(HALF_A_DEVIATION * deviation, FIVE_DEVIATIONS * deviation);
  }

  /**
   * Both sums after one value.
   *
   * @param high what has piled up above
   * @param low what has piled up below
   */
  public record Sums(double high, double low) {}

  /** The sums, one pair for each value. */
  public List<Sums> sums(List<Double> values, double mean) {
    List<Sums> sums = new ArrayList<>();
    double high = 0;
    double low = 0;
    for (double value : values) {
      high = Math.max(0, high + value - mean - allowance);
      low = Math.max(0, low + mean - allowance - value);
      sums.add(new Sums(high, low));
    }
    return sums;
  }
}
