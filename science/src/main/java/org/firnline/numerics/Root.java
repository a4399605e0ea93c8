package org.firnline.numerics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Zero of a continuous function in an interval at whose ends it has opposite signs. */
public final class Root {

  /** More than enough for any bracketed function in double precision. */
  private static final int MOST_EVALUATIONS = 300;

  private static final int ORDER = 5;

  private Root() {}

  /**
   * The root of {@code function} in [{@code low}, {@code high}], to a relative and absolute
   * accuracy near the resolution of a double.
   *
   * @throws IllegalArgumentException if the ends do not bracket a root
   */
  public static double find(DoubleUnaryOperator function, double low, double high) {
    double atLow = function.applyAsDouble(low);
    if (atLow == 0) {
      return low;
    }
    double atHigh = function.applyAsDouble(high);
    if (atHigh == 0) {
      return high;
    }
    if (!(atLow * atHigh < 0)) {
      throw new IllegalArgumentException(
          "no sign change between " + low + " (" + atLow + ") and " + high + " (" + atHigh + ")");
    }
    var solver = new BracketingNthOrderBrentSolver(4e-16, 1e-15, 0, ORDER);
    return solver.solve(
        MOST_EVALUATIONS, function::applyAsDouble, low, high, AllowedSolution.ANY_SIDE);
  }
}
