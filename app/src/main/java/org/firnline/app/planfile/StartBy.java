package org.firnline.app.planfile;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * When a run has to start so that somebody is there when it ends.
 *
 * @param start the latest start on the first day that has one
 * @param end the latest credible end of that run
 */
public record StartBy(LocalDateTime start, LocalDateTime end) {
  /** Working hours unless the lab says otherwise; an assumption. */
  private static final LocalTime OPENING = LocalTime.of(8, 0);

  private static final LocalTime CLOSING = LocalTime.of(18, 0);
  private static final int STEP_MINUTES = 30;
  private static final int DAYS = 14;

  /**
   * The latest start, on a full or half hour in working hours, of the first day within two weeks on
   * which a run of {@code longest_s} ends in working hours.
   *
   * @param now the clock of the laboratory
   * @param longest_s the latest credible duration, s
   */
  public static Optional<StartBy> after(LocalDateTime now, double longest_s) {
    if (!Double.isFinite(longest_s)) {
      return Optional.empty();
    }
    LocalDateTime midnight = now.truncatedTo(ChronoUnit.DAYS);
    for (int day = 0; day < DAYS; day++) {
      LocalDateTime start = midnight.plusDays(day).with(CLOSING);
      while (!start.toLocalTime().isBefore(OPENING)) {
        LocalDateTime end = start.plusSeconds(Math.round(longest_s));
        if (!start.isBefore(now) && isAttended(start) && isAttended(end)) {
          return Optional.of(new StartBy(start, end));
        }
        start = start.minusMinutes(STEP_MINUTES);
      }
    }
    return Optional.empty();
  }

  private static boolean isAttended(LocalDateTime time) {
    boolean weekend = time.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) > 0;
    LocalTime clock = time.toLocalTime();
    return !weekend && !clock.isBefore(OPENING) && !clock.isAfter(CLOSING);
  }
}
