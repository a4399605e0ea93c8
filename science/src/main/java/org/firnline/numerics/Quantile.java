package org.firnline.numerics;

import java.util.Arrays;

/**
 * Values below which given shares of a sample lie, with straight lines between its members.
 *
 * <p>Source: Hyndman &amp; Fan, Am. Stat. 50, 361 (1996), definition 7.
 */
public final class Quantile {

  private final double[] sorted;

  /**
   * @param sample at least one value; infinite ones sort to the end
   */
  public Quantile(double... sample) {
    if (sample.length == 0) {
      throw new IllegalArgumentException("no quantile of an empty sample");
    }
    sorted = sample.clone();
    Arrays.sort(sorted);
  }

  /**
   * The value below which {@code share} of the sample lies.
   *
   * @param share 0 to 1
   */
  public double at(double share) {
    double place = share * (sorted.length - 1);
    int low = (int) Math.floor(place);
    int high = Math.min(low + 1, sorted.length - 1);
    if (sorted[low] == sorted[high]) {
      return sorted[low];
    }
    double part = place - low;
    return part == 0 ? sorted[low] : sorted[low] + part * (sorted[high] - sorted[low]);
  }
}
