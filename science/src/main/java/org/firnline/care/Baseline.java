package org.firnline.care;

import java.util.List;

/**
 * What is usual: mean and standard deviation of the first values of a series.
 *
 * @param mean SI
 * @param deviation standard deviation; 0 or more
 * @param count how many values it rests on
 */
public record Baseline(double mean, double deviation, int count) {

  /** A mean moving range of two is 1.128 standard deviations; NIST/SEMATECH e-Handbook 6.3.2.2. */
  private static final double RANGE_OF_TWO = 1.128;

  public Baseline {
    if (!Double.isFinite(mean) || !(deviation >= 0)) {
      throw new IllegalArgumentException("a baseline of " + mean + " ± " + deviation);
    }
  }

  /**
   * The baseline of the first {@code count} values. Their deviation comes from the mean moving
   * range, which a slow drift inside the baseline does not blow up.
   */
  public static Baseline of(List<Double> values, int count) {
    int used = Math.min(count, values.size());
    if (used < 2) {
      throw new IllegalArgumentException("a baseline needs two values or more");
    }
    double sum = 0;
    double ranges = 0;
    for (int i = 0; i < used; i++) {
      sum += values.get(i);
      ranges += i > 0 ? Math.abs(values.get(i) - values.get(i - 1)) : 0;
    }
    return new Baseline(sum / used, ranges / (used - 1) / RANGE_OF_TWO, used);
  }
}
