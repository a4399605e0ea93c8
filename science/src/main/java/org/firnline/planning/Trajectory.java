package org.firnline.planning;

/**
 * Primary drying of one vial at one hold, in the few numbers that decide about it.
 *
 * @param outcome how it ends
 * @param time until the ice is gone, s; infinite unless it dries
 * @param warmest greatest temperature of any frozen point, K
 * @param peakRate greatest vapor rate, kg/s
 */
record Trajectory(Outcome outcome, double time, double warmest, double peakRate) {

  /** How a trajectory ends. */
  enum Outcome {
    DRIES,
    NOTHING_SUBLIMES,
    MELTS
  }

  boolean dries() {
    return outcome == Outcome.DRIES;
  }
}
