package org.firnline.lab;

import java.util.OptionalDouble;

/**
 * One line of a recipe as a dryer's panel takes it: go to a shelf temperature, then stay.
 *
 * @param phase which phase it belongs to
 * @param shelfTarget shelf temperature at the end of the ramp and during the hold, K; positive
 * @param ramp rate of the ramp whatever its direction, K/s; positive
 * @param pressure chamber pressure to hold, Pa; empty at atmospheric pressure and where the dryer
 *     pumps without control
 * @param hold time at {@code shelfTarget} after the ramp, s; 0 or more
 */
public record RecipeStep(
    RecipePhase phase, double shelfTarget, double ramp, OptionalDouble pressure, double hold) {

  public RecipeStep {
    Check.positive(shelfTarget, "shelf target", "K");
    Check.positive(ramp, "shelf ramp", "K/s");
    pressure.ifPresent(set -> Check.positive(set, "chamber pressure", "Pa"));
    Check.that(
        pressure.isEmpty() || phase.underVacuum(),
        "pressure-at-atmosphere",
        "chamber pressure",
        "a chamber pressure during " + phase.label(),
        "belongs to phases under vacuum",
        "leave it out");
    Check.finite(hold, "hold time", "s");
    Check.notNegative(hold, "hold time", "s");
  }

  /** Time the ramp takes from a shelf at {@code start_K}, s. */
  public double rampTime(double start_K) {
    return Math.abs(shelfTarget - start_K) / ramp;
  }

  /** Ramp and hold from a shelf at {@code start_K}, s. */
  public double duration(double start_K) {
    return rampTime(start_K) + hold;
  }
}
