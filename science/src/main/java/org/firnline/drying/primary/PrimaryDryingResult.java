package org.firnline.drying.primary;

import java.util.Optional;

/**
 * Primary drying of one vessel at constant settings.
 *
 * @param outcome how it ends
 * @param iceMass ice at the start, kg
 * @param thickness frozen thickness at the start, m
 * @param course what happens in between; empty where nothing sublimes
 */
public record PrimaryDryingResult(
    Outcome outcome, double iceMass, double thickness, Optional<Course> course) {

  /**
   * The path from the first to the last front that this outcome reaches.
   *
   * @param start balance at depth 0
   * @param end balance at the last depth reached
   * @param warmestFront greatest front temperature on the way, K
   * @param warmestPoint greatest temperature of any frozen point on the way, K
   * @param peakRate greatest vapor rate on the way, kg/s
   */
  public record Course(
      FrontState start,
      FrontState end,
      double warmestFront,
      double warmestPoint,
      double peakRate) {}

  /** Time until the last ice is gone, s; infinite or empty where it never comes. */
  public Optional<Double> dryingTime() {
    if (outcome instanceof Outcome.Dries dries) {
      return Optional.of(dries.time());
    }
    boolean never = outcome instanceof Outcome.NothingSublimes || outcome instanceof Outcome.Stalls;
    return never ? Optional.of(Double.POSITIVE_INFINITY) : Optional.empty();
  }
}
