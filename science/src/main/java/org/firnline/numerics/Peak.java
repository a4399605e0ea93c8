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

  /** A function that rises this far, as a share of the first or last interval, peaks inside it. */
  private static final double JUST_INSIDE = 1e-3;

  private static final int MOST_EVALUATIONS = 200;

  private Peak() {}

  /**
   * The greatest value of {@code function} on [{@code low}, {@code high}]: sampled at points that
   * crowd towards both ends, where a front changes fastest, then refined around the best of them. A
   * peak in the middle that is narrower than a twentieth of the interval may be missed.
   */
  public static double of(DoubleUnaryOperator function, double low, double high) {
    int best = 0;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int sample = 0; sample < SAMPLES; sample++) {
      double value = function.applyAsDouble(sample(sample, low, high));
      if (value > greatest) {
        greatest = value;
        best = sample;
      }
    }
    double before = sample(Math.max(0, best - 1), low, high);
    double after = sample(Math.min(SAMPLES - 1, best + 1), low, high);
    if ((best == 0 || best == SAMPLES - 1) && !turnsInside(function, before, after, greatest)) {
      return greatest;
    }
    return Math.max(greatest, refine(function, before, after));
  }

  /** Point number {@code sample}, the ends exactly. */
  private static double sample(int sample, double low, double high) {
    double share = (1 - Math.cos(Math.PI * sample / (SAMPLES - 1))) / 2;
    return sample == SAMPLES - 1 ? high : low + (high - low) * share;
  }

  private static boolean turnsInside(
      DoubleUnaryOperator function, double before, double after, double atEnd) {
    double step = JUST_INSIDE * (after - before);
    return Math.max(function.applyAsDouble(before + step), function.applyAsDouble(after - step))
        > atEnd;
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
