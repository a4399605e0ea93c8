package org.firnline.learning.run;

/**
 * What a run says about one parameter.
 *
 * @param parameter which
 * @param prior belief before; for the heat transfer in W/(m2 K) at the mean pressure
 * @param best value, SI
 * @param spread standard deviation after: relative, or in K for the offset; 0 if held
 * @param low value that the truth exceeds with 95 %
 * @param high value that the truth stays below with 95 %
 */
public record Learned(
    Parameter parameter, Prior prior, double best, double spread, double low, double high) {

  /** Above this share of the prior's spread the run has taught little. */
  private static final double LITTLE = 0.7;

  /** Whether the value was held and not learned. */
  public boolean isHeld() {
    return prior.isHeld();
  }

  /** Whether the run says little more than was believed before. */
  public boolean isMostlyPrior() {
    return !isHeld() && spread > LITTLE * prior.spread();
  }

  /** Whether {@code truth} lies between {@link #low} and {@link #high}. */
  public boolean holds(double truth) {
    return low <= truth && truth <= high;
  }
}
