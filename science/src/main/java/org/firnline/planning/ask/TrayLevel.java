package org.firnline.planning.ask;

import org.firnline.planning.Verdict;

/**
 * A tray that does not stand level: one end is deeper.
 *
 * <p>Where the cake decides, time goes with the square of the depth; where heat decides, with the
 * depth.
 *
 * @param length of the tray along the slope, m; positive
 * @param slope rad; 0 to below a right angle
 * @param meanDepth of the product, m; positive
 */
public record TrayLevel(double length, double slope, double meanDepth) {

  /** A tenth more depth at one end is worth a wedge; an assumption of this check. */
  private static final double WATCH_SHARE = 0.1;

  private static final double RIGHT_ANGLE = Math.PI / 2;

  public TrayLevel {
    Given.positive(length, "length of the tray", "m");
    Given.positive(meanDepth, "depth in the tray", "m");
    Given.that(
        slope >= 0 && slope < RIGHT_ANGLE,
        "slope of the tray",
        "slope of the tray " + slope + " rad",
        "must be 0 or more and below a right angle",
        "give for instance 1 degree");
  }

  /** Depth at the low end less depth at the high end while both are covered, m. */
  public double difference() {
    return length * Math.tan(slope);
  }

  /** Depth at the low end, m; where the high end falls dry the liquid forms a wedge. */
  public double deepest() {
    double difference = difference();
    return difference <= 2 * meanDepth
        ? meanDepth + difference / 2
        : Math.sqrt(2 * meanDepth * length * Math.tan(slope));
  }

  /** Greatest drying time over that of a level tray, where the cake decides. */
  public double timeFactor() {
    double ratio = deepest() / meanDepth;
    return ratio * ratio;
  }

  /** Whether somebody should level it; a stop where part of the bottom falls dry. */
  public Verdict verdict() {
    if (difference() > 2 * meanDepth) {
      return Verdict.STOP;
    }
    return deepest() > meanDepth * (1 + WATCH_SHARE) ? Verdict.WATCH : Verdict.PASS;
  }
}
