package org.firnline.numerics;

import java.util.function.DoublePredicate;

/** The point at which a condition that is false at one end of an interval becomes true. */
public final class Threshold {

  /** Enough halvings to reach the resolution of a double from any interval. */
  private static final int HALVINGS = 60;

  private Threshold() {}

  /**
   * The least point (to the resolution of a double) from which {@code condition} holds, by halving.
   *
   * @param low where the condition does not hold
   * @param high where it holds
   */
  public static double of(DoublePredicate condition, double low, double high) {
    return within(condition, low, high, 0);
  }

  /** As {@link #of}, to within {@code width}. */
  public static double within(DoublePredicate condition, double low, double high, double width) {
    double without = low;
    double with = high;
    for (int halving = 0; halving < HALVINGS && with - without > width; halving++) {
      double middle = (without + with) / 2;
      if (middle == without || middle == with) {
        break;
      }
      if (condition.test(middle)) {
        with = middle;
      } else {
        without = middle;
      }
    }
    return with;
  }
}
