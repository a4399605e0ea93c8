package org.firnline.evidence;

/**
 * An uncertain value: the one type for every input that is not known exactly.
 *
 * @param best the most plausible value, SI; finite
 * @param spread one standard deviation of the doubt about {@code best}, in the unit of a difference
 *     of {@code best}; 0 or more, 0 where the value is taken as exact
 * @param provenance where it comes from
 */
public record Estimate(double best, double spread, Provenance provenance) {

  public Estimate {
    if (!Double.isFinite(best)) {
      throw new IllegalArgumentException("best value " + best + " is not finite");
    }
    if (!(spread >= 0) || Double.isInfinite(spread)) {
      throw new IllegalArgumentException(
          "spread " + spread + " is not a finite number of 0 or more");
    }
  }

  /** A value taken as exact. */
  public static Estimate exact(double best, Provenance provenance) {
    return new Estimate(best, 0, provenance);
  }

  /** The value {@code deviations} standard deviations above (or, if negative, below) the best. */
  public double shifted(double deviations) {
    return best + deviations * spread;
  }

  /** The same doubt about the same origin around another best value. */
  public Estimate withBest(double other) {
    return new Estimate(other, spread, provenance);
  }
}
