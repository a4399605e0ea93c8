package org.firnline.drying.secondary;

/**
 * What secondary drying has to achieve.
 *
 * @param start shelf temperature when it begins, K; positive
 * @param hold temperature of the hold, K; positive
 * @param fastestRamp the dryer's, K/s; positive
 * @param slowestRamp slowest ramp worth considering, K/s; positive, at most {@code fastestRamp}
 * @param target wanted moisture, kg water per kg dry solids; positive
 * @param margin wanted distance below the glass transition, K; 0 or more
 */
public record SecondaryDemand(
    double start,
    double hold,
    double fastestRamp,
    double slowestRamp,
    double target,
    double margin) {

  public SecondaryDemand {
    if (!(start > 0) || !(hold > 0) || !(target > 0) || !(margin >= 0)) {
      throw new IllegalArgumentException(
          "secondary drying from "
              + start
              + " K at "
              + hold
              + " K to "
              + target
              + " kg/kg with "
              + margin
              + " K to spare cannot be");
    }
    if (!(slowestRamp > 0 && slowestRamp <= fastestRamp)) {
      throw new IllegalArgumentException(
          "ramps from " + slowestRamp + " to " + fastestRamp + " K/s are out of order");
    }
  }

  WarmingProgram with(double ramp) {
    return new WarmingProgram(start, hold, ramp);
  }
}
