package org.firnline.numerics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Gauss–Legendre quadrature of a smooth function: panels of a fixed order, doubled until two
 * successive answers agree.
 *
 * <p>Source: Abramowitz &amp; Stegun, Handbook of Mathematical Functions (1964), 25.4.29.
 */
public final class GaussLegendre {

  private static final int ORDER = 10;
  private static final int MOST_DOUBLINGS = 12;

  private static final GaussIntegratorFactory FACTORY = new GaussIntegratorFactory();

  private GaussLegendre() {}

  /**
   * The integral of {@code function} from {@code from} to {@code to}, in either direction.
   *
   * @param relative wanted agreement of two successive answers, for instance 1e-12
   */
  public static double integrate(
      DoubleUnaryOperator function, double from, double to, double relative) {
    if (from == to) {
      return 0;
    }
    if (from > to) {
      return -integrate(function, to, from, relative);
    }
    double coarse = panels(function, from, to, 1);
    for (int doubling = 1; doubling <= MOST_DOUBLINGS; doubling++) {
      double fine = panels(function, from, to, 1 << doubling);
      if (Math.abs(fine - coarse) <= relative * Math.abs(fine)) {
        return fine;
      }
      coarse = fine;
    }
    return coarse;
  }

  private static double panels(DoubleUnaryOperator function, double from, double to, int count) {
    double width = (to - from) / count;
    double sum = 0;
    for (int panel = 0; panel < count; panel++) {
      double start = from + panel * width;
      sum += FACTORY.legendre(ORDER, start, start + width).integrate(function::applyAsDouble);
    }
    return sum;
  }
}
