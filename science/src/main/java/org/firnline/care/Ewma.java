package org.firnline.care;

import java.util.ArrayList;
import java.util.List;

/**
 * Exponentially weighted moving average: z_t = λ y_t + (1 − λ) z_{t−1}, z_0 = the usual mean; out
 * of control beyond mean ± k σ √(λ/(2 − λ)).
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4 (from memory).
 *
 * @param weight λ, above 0 to 1; 0.2 to 0.3 are usual
 * @param width k in standard deviations; 3 is usual
 */
public record Ewma(double weight, double width) {

  /** λ = 0.3 and three standard deviations, as in the handbook's example. */
  public static final Ewma USUAL = new Ewma(0.3, 3);

  public Ewma {
    if (!(weight > 0 && weight <= 1) || !(width > 0)) {
      throw new IllegalArgumentException("a weight of " + weight + " or a width of " + width);
    }
  }

  /** The averages, one for each value. */
  public List<Double> averages(List<Double> values, double mean) {
    List<Double> averages = new ArrayList<>();
    double now = mean;
    for (double value : values) {
      now = weight * value + (1 - weight) * now;
      averages.add(now);
    }
    return averages;
  }

  /** Half the distance between the control limits. */
  public double reach(double deviation) {
    return width * deviation * Math.sqrt(weight / (2 - weight));
  }
}
