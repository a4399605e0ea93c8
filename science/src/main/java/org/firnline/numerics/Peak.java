package org.firnline.numerics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

/** Greatest value of a smooth function over an interval, ends included. */
public final class Peak {

  private static final int SAMPLES = 33;
  private static final int MOST_EVALUATIONS = 200;

  private Peak() {}

  /**
   * The greatest value of {@code function} on [{@code low}, {@code high}]: sampled evenly, then
   * refined around the best sample. A peak narrower than a thirty-second of the interval may be
   * missed.
   */
  public static double of(DoubleUnaryOperator function, double low, double high) {
    double step = (high - low) / (SAMPLES - 1);
    int best = 0;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int sample = 0; sample < SAMPLES; sample++) {
      double value = function.applyAsDouble(sample == SAMPLES - 1 ? high : low + sample * step);
      if (value > greatest) {
        greatest = value;
        best = sample;
      }
    }
    if (best == 0 || best == SAMPLES - 1) {
      return greatest;
    }
    return Math.max(greatest, refine(function, low + (best - 1) * step, low + (best + 1) * step));
  }

  /** Where {@code function}, which has one peak on the interval, is greatest. */
  public static double location(DoubleUnaryOperator function, double low, double high) {
    return optimum(function, low, high).getPoint();
  }

  private static double refine(DoubleUnaryOperator function, double low, double high) {
    return optimum(function, low, high).getValue();
  }

  private static UnivariatePointValuePair optimum(
      DoubleUnaryOperator function, double low, double high) {
    return new BrentOptimizer(1e-9, 1e-300)
        .optimize(
            new MaxEval(MOST_EVALUATIONS),
            new UnivariateObjectiveFunction(function::applyAsDouble),
            GoalType.MAXIMIZE,
            new SearchInterval(low, high));
  }
}
