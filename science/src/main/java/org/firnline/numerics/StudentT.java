package org.firnline.numerics;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Student's t: by how many standard uncertainties an interval must reach when the uncertainty
 * itself is known from few observations only.
 */
public final class StudentT {

  private StudentT() {}

  /**
   * The factor k with which ±k standard uncertainties hold the value with {@code probability}.
   *
   * @param probability above 0 and below 1, such as 0.95
   * @param freedom degrees of freedom; 1 or more, infinite for a normal distribution
   */
  public static double coverageFactor(double probability, double freedom) {
    double below = (1 + probability) / 2;
    return Double.isInfinite(freedom)
        ? Normal.quantile(below)
        : new TDistribution(freedom).inverseCumulativeProbability(below);
  }
}
