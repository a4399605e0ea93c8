package org.firnline.evidence;

/**
 * A computed result with its doubt: the most plausible value and the limits that hold nine chances
 * in ten unless its owner says otherwise.
 *
 * @param low lower limit, not above {@code best}
 * @param best most plausible value
 * @param high upper limit, not below {@code best}; infinite where the event may never come
 */
public record Band(double low, double best, double high) {

  public Band {
    if (!(low <= best) || !(best <= high)) {
      throw new IllegalArgumentException(
          "band " + low + " … " + best + " … " + high + " is out of order");
    }
  }

  /** Half of the distance between the limits. */
  public double halfWidth() {
    return (high - low) / 2;
  }
}
