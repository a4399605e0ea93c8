package org.firnline.learning.run;

/**
 * What is believed of a parameter before the run.
 *
 * @param best median of a lognormal distribution, or mean of a normal one for an offset
 * @param spread standard deviation: of the logarithm, about the relative one, or of the offset
 *     itself; 0 holds the parameter
 */
public record Prior(double best, double spread) {

  public Prior {
    if (!Double.isFinite(best) || !(spread >= 0) || Double.isInfinite(spread)) {
      throw new IllegalArgumentException("a prior of " + best + " with spread " + spread);
    }
  }

  /** A parameter that is taken as known. */
  public static Prior held(double value) {
    return new Prior(value, 0);
  }

  boolean isHeld() {
    return spread == 0;
  }
}
