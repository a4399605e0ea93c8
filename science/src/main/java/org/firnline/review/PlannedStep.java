package org.firnline.review;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A step of the recipe the run was to follow.
 *
 * @param name what the step is called
 * @param shelf_K shelf temperature at its end, K; empty if the step leaves it alone
 * @param pressure_Pa chamber pressure, Pa; empty if the step leaves it alone
 * @param duration_s length in seconds, ramp included; 0 or more
 */
public record PlannedStep(
    String name, OptionalDouble shelf_K, OptionalDouble pressure_Pa, double duration_s) {
  public PlannedStep {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(shelf_K, "shelf_K");
    Objects.requireNonNull(pressure_Pa, "pressure_Pa");
    if (!(duration_s >= 0)) {
      throw new IllegalArgumentException(
          "step " + name + ": duration " + duration_s + " s must not be negative");
    }
  }
}
