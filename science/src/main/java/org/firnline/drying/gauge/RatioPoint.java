package org.firnline.drying.gauge;

/**
 * Two gauges at one time.
 *
 * @param time s
 * @param ratio thermal-conductivity reading over true pressure; positive
 */
public record RatioPoint(double time, double ratio) {

  public RatioPoint {
    if (!Double.isFinite(time) || !(ratio > 0) || Double.isInfinite(ratio)) {
      throw new IllegalArgumentException(
          "a gauge ratio of " + ratio + " at " + time + " s was never read");
    }
  }
}
