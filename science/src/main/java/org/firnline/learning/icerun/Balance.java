package org.firnline.learning.icerun;

/**
 * The balance of an ice run.
 *
 * @param resolution last digit it shows, kg; 0 or more
 * @param repeatability standard deviation of repeated weighings, kg; 0 or more
 */
public record Balance(double resolution, double repeatability) {

  /** A digit hides anything in its own width; JCGM 100:2008, F.2.2.1. */
  private static final double WIDTH_OF_A_DIGIT = Math.sqrt(12);

  public Balance {
    if (!(resolution >= 0) || !(repeatability >= 0)) {
      throw new IllegalArgumentException(
          "a balance of " + resolution + " kg and " + repeatability + " kg cannot be");
    }
  }

  /** Standard uncertainty of a difference of two weighings, kg. */
  public double ofLoss() {
    return Math.sqrt(2) * Math.hypot(resolution / WIDTH_OF_A_DIGIT, repeatability);
  }
}
