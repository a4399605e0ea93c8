package org.firnline.planning;

import java.util.function.ToDoubleFunction;

/**
 * How a result of one vial answers to a small change of what is uncertain, from differences one
 * standard deviation up and down.
 *
 * <p>Doubt is carried on to first order (JCGM 100:2008, 5.1): the law of propagation of
 * uncertainty, kept apart for rises and falls so that a result which never comes stays visible.
 *
 * @param best the result at the best values
 * @param heat its change when K_v rises and falls
 * @param resistance its change when R_0 and A_1 rise and fall
 * @param fill its change when the fill rises and falls
 */
record Sensitivity(double best, Change heat, Change resistance, Change fill) {

  /**
   * The two changes of a result.
   *
   * @param up change of the result when the input rises by one standard deviation
   * @param down change of the result when it falls by as much
   */
  record Change(double up, double down) {

    double rise() {
      return Math.max(0, Math.max(up, down));
    }

    double fall() {
      return Math.max(0, -Math.min(up, down));
    }
  }

  /** Relative standard deviations of the inputs at one level (run or vessel). */
  record Spreads(double heat, double resistance, double fill) {}

  /** The sensitivity of {@code result} around {@code vial}. */
  static Sensitivity of(ToDoubleFunction<VialCase> result, VialCase vial, Spreads spreads) {
    double best = result.applyAsDouble(vial);
    return new Sensitivity(
        best,
        change(spreads.heat(), best, factor -> result.applyAsDouble(vial.warmedBy(factor))),
        change(spreads.resistance(), best, factor -> result.applyAsDouble(vial.hinderedBy(factor))),
        change(spreads.fill(), best, factor -> result.applyAsDouble(vial.filledBy(factor))));
  }

  private static Change change(
      double spread, double best, java.util.function.DoubleUnaryOperator result) {
    if (spread == 0) {
      return new Change(0, 0);
    }
    return new Change(
        difference(result.applyAsDouble(Math.exp(spread)), best),
        difference(result.applyAsDouble(Math.exp(-spread)), best));
  }

  /** Two infinite results do not differ. */
  private static double difference(double value, double best) {
    return value == best ? 0 : value - best;
  }

  /** Standard deviation of the result towards greater values; infinite if it may never come. */
  double rise() {
    return root(heat.rise(), resistance.rise(), fill.rise());
  }

  /** Standard deviation of the result towards smaller values. */
  double fall() {
    return root(heat.fall(), resistance.fall(), fill.fall());
  }

  private static double root(double a, double b, double c) {
    return Math.sqrt(a * a + b * b + c * c);
  }
}
