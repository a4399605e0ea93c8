package org.firnline.care;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Something to be done to a dryer again and again, at intervals that the laboratory sets.
 *
 * @param name what
 * @param last when it was done last; empty if never
 * @param every calendar time between two; empty if it goes by running hours alone
 * @param runningHours hours of running between two; 0 if it goes by the calendar alone
 */
public record CareTask(
    String name, Optional<Instant> last, Optional<Duration> every, double runningHours) {

  /** How a task stands. */
  public enum Standing {
    /** Due now or before. */
    DUE,
    /** Nine tenths of an interval have passed. */
    SOON,
    /** Not yet. */
    LATER,
    /** Never done here, so nobody knows. */
    UNKNOWN
  }

  private static final double SOON_SHARE = 0.9;

  public CareTask {
    if (!(runningHours >= 0) || (every.isEmpty() && runningHours == 0)) {
      throw new IllegalArgumentException(
          "the task '" + name + "' needs an interval: days, running hours or both");
    }
    if (every.map(time -> time.isZero() || time.isNegative()).orElse(false)) {
      throw new IllegalArgumentException("the interval of '" + name + "' must be positive");
    }
  }

  /**
   * How it stands.
   *
   * @param hoursSince hours the dryer ran since {@link #last}
   */
  public Standing at(Instant now, double hoursSince) {
    if (last.isEmpty()) {
      return Standing.UNKNOWN;
    }
    double share = used(now, hoursSince);
    return share >= 1 ? Standing.DUE : share >= SOON_SHARE ? Standing.SOON : Standing.LATER;
  }

  /** Share of the interval that has passed, the larger of both ways of counting. */
  public double used(Instant now, double hoursSince) {
    double byHours = runningHours == 0 ? 0 : hoursSince / runningHours;
    double byTime =
        last.isEmpty() || every.isEmpty()
            ? 0
            : (double) Duration.between(last.get(), now).toSeconds() / every.get().toSeconds();
    return Math.max(byHours, byTime);
  }
}
