package org.firnline.numerics;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The standard normal distribution. */
public final class Normal {

  private static final NormalDistribution STANDARD = new NormalDistribution(0, 1);

  private Normal() {}

  /**
   * The value that a standard normal variable stays below with {@code probability}.
   *
   * @param probability above 0 and below 1
   */
  public static double quantile(double probability) {
    return STANDARD.inverseCumulativeProbability(probability);
  }

  /** The probability that a standard normal variable stays below {@code value}. */
  public static double probabilityBelow(double value) {
    return STANDARD.cumulativeProbability(value);
  }
}
