package org.firnline.logs;

import java.time.ZoneId;
import java.util.Objects;

/**
 * How the times of a log came about.
 *
 * @param zone zone the stamps were read in; UTC for epoch and elapsed times
 * @param rule the rule in words, such as "day.month.year and time in two columns, fixed UTC+1"
 * @param startKnown false if the file holds only elapsed time and its start is assumed: durations
 *     are right, dates are not
 */
public record TimeBasis(ZoneId zone, String rule, boolean startKnown) {
  public TimeBasis {
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(rule, "rule");
  }
}
