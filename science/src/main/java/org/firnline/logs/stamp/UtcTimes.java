package org.firnline.logs.stamp;

import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

/**
 * Times of all rows in UTC and how they came about.
 *
 * @param line the times, never running backward
 * @param zone the zone the stamps were read in
 * @param zoneRule how the zone was applied, in words
 * @param changes where the logger's clock was set
 * @param spread rows whose equal stamps were spread evenly
 */
public record UtcTimes(
    UtcLine line, ZoneId zone, String zoneRule, List<ClockChange> changes, int spread) {
  public UtcTimes {
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(zoneRule, "zoneRule");
    changes = List.copyOf(changes);
  }
}
