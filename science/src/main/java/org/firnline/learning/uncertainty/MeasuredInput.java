package org.firnline.learning.uncertainty;

/**
 * One input of a measurement.
 *
 * @param name what it is, for the budget
 * @param best its estimate, SI
 * @param uncertainty standard uncertainty, in the unit of a difference of {@code best}; 0 or more
 * @param freedom degrees of freedom of that uncertainty; positive, infinite where it is taken as
 *     known
 */
public record MeasuredInput(String name, double best, double uncertainty, double freedom) {

  private static final double RECTANGULAR = Math.sqrt(3);

  public MeasuredInput {
    if (!Double.isFinite(best) || !(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
      throw new IllegalArgumentException(
          name + " of " + best + " ± " + uncertainty + " is no measured value");
    }
    if (!(freedom > 0)) {
      throw new IllegalArgumentException(name + ": degrees of freedom must be positive");
    }
  }

  /** An input whose uncertainty is taken as known. */
  public static MeasuredInput known(String name, double best, double uncertainty) {
    return new MeasuredInput(name, best, uncertainty, Double.POSITIVE_INFINITY);
  }

  /**
   * Standard uncertainty of a value known to lie within ± {@code halfWidth}, anywhere in it alike.
   *
   * <p>Source: JCGM 100:2008, 4.3.7.
   */
  public static double within(double halfWidth) {
    return halfWidth / RECTANGULAR;
  }
}
