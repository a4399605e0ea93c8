package org.firnline.drying.recipe;

/**
 * Go to a shelf temperature, then stay.
 *
 * @param target K; positive
 * @param ramp rate of the ramp whatever its direction, K/s; positive
 * @param hold time at the target after the ramp, s; 0 or more
 */
public record ShelfStep(double target, double ramp, double hold) {

  public ShelfStep {
    if (!(target > 0) || !(ramp > 0) || !(hold >= 0)) {
      throw new IllegalArgumentException(
          "shelf step to "
              + target
              + " K at "
              + ramp
              + " K/s for "
              + hold
              + " s: target and ramp must be positive, hold 0 or more");
    }
  }
}
