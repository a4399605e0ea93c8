package org.firnline.lab;

/**
 * The settings a machine accepts.
 *
 * @param low least setting, SI
 * @param high greatest setting, SI; not below {@code low}
 */
public record Range(double low, double high) {

  public Range {
    Check.that(
        Double.isFinite(low) && Double.isFinite(high) && low <= high,
        "range-order",
        "range",
        low + " to " + high,
        "the first limit must not exceed the second",
        "swap the two");
  }

  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /** The setting nearest to {@code value} that the machine accepts. */
  public double nearest(double value) {
    return Math.min(high, Math.max(low, value));
  }
}
