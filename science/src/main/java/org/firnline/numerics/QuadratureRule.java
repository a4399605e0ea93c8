package org.firnline.numerics;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Points and weights of Gauss–Legendre quadrature on one interval, for callers that want every
 * value of the integrand and not only the integral.
 *
 * <p>Source: Abramowitz &amp; Stegun, Handbook of Mathematical Functions (1964), 25.4.29.
 */
public final class QuadratureRule {

  private final double[] points;
  private final double[] weights;

  private QuadratureRule(double[] points, double[] weights) {
    this.points = points;
    this.weights = weights;
  }

  /** The rule with {@code order} points; exact for polynomials up to degree 2 order − 1. */
  public static QuadratureRule gaussLegendre(int order) {
    GaussIntegrator integrator = new GaussIntegratorFactory().legendre(order);
    double[] points = new double[order];
    double[] weights = new double[order];
    for (int i = 0; i < order; i++) {
      points[i] = integrator.getPoint(i);
      weights[i] = integrator.getWeight(i);
    }
    return new QuadratureRule(points, weights);
  }

  public int size() {
    return points.length;
  }

  /**
   * The {@code index}-th point of the rule between {@code from} and {@code to}, in rising order.
   */
  public double point(int index, double from, double to) {
    return from + (to - from) * (1 + points[index]) / 2;
  }

  /** The weight of that point, so that the weighted sum is the integral. */
  public double weight(int index, double from, double to) {
    return (to - from) * weights[index] / 2;
  }
}
