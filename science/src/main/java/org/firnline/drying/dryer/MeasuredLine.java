package org.firnline.drying.dryer;

/**
 * A dryer whose vapor flow was measured at several pressures: flow = slope (pressure − threshold).
 *
 * @param slope kg/(s Pa); positive
 * @param threshold chamber pressure at which nothing passes, Pa
 */
public record MeasuredLine(double slope, double threshold) implements VaporLimit {

  public MeasuredLine {
    if (!(slope > 0)) {
      throw new IllegalArgumentException("slope of the line " + slope + " is not positive");
    }
    if (!Double.isFinite(threshold)) {
      throw new IllegalArgumentException("threshold of the line " + threshold + " is not finite");
    }
  }

  @Override
  public Part part() {
    return Part.LINE;
  }

  @Override
  public double rate(double pressure_Pa) {
    return Math.max(0, slope * (pressure_Pa - threshold));
  }
}
