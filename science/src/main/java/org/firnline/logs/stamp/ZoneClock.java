package org.firnline.logs.stamp;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/**
 * Turns local stamps into UTC in file order: at the autumn change the repeated hour is told by the
 * step back, and a logger that knows no summer time is told by stamps that run straight through a
 * change.
 */
final class ZoneClock {
  private static final long MINUTE_MS = 60_000;

  private final ZoneId zone;
  private final boolean neverChanges;
  private String rule = "";

  ZoneClock(ZoneId zone, boolean neverChanges) {
    this.zone = zone;
    this.neverChanges = neverChanges;
  }

  /** How the zone was applied; set by {@link #toUtc}. */
  String rule() {
    return rule;
  }

  /** UTC milliseconds of local stamps given as if they were UTC. */
  long[] toUtc(long[] local) {
    ZoneRules rules = zone.getRules();
    if (local.length == 0 || rules.isFixedOffset()) {
      rule = "fixed " + zone.getId();
      return shifted(local, rules.getOffset(Instant.EPOCH));
    }
    if (neverChanges) {
      ZoneOffset offset = rules.getOffset(at(local[0]));
      rule = zone.getId() + ", clock never changes: always " + offset;
      return shifted(local, offset);
    }
    if (runsThroughChange(local, rules)) {
      ZoneOffset offset = rules.getOffset(at(local[0]));
      rule =
          zone.getId() + ", but the stamps run straight through a clock change: always " + offset;
      return shifted(local, offset);
    }
    rule = zone.getId() + " with its summer time";
    return followed(local, rules);
  }

  private static LocalDateTime at(long local) {
    return LocalDateTime.ofEpochSecond(Math.floorDiv(local, 1000L), 0, ZoneOffset.UTC);
  }

  private static long[] shifted(long[] local, ZoneOffset offset) {
    long[] utc = new long[local.length];
    for (int i = 0; i < local.length; i++) {
      utc[i] = local[i] - offset.getTotalSeconds() * 1000L;
    }
    return utc;
  }

  private static boolean runsThroughChange(long[] local, ZoneRules rules) {
    long usual = Math.max(3 * Steps.median(local), 2 * MINUTE_MS);
    Instant from = Instant.ofEpochMilli(local[0]).minusSeconds(86_400);
    ZoneOffsetTransition change = rules.nextTransition(from);
    long last = local[local.length - 1];
    while (change != null && wall(change.getDateTimeBefore()) <= last + 7_200_000) {
      if (change.isGap() ? standsInGap(local, change) : runsOver(local, change, usual)) {
        return true;
      }
      change = rules.nextTransition(change.getInstant());
    }
    return false;
  }

  private static boolean standsInGap(long[] local, ZoneOffsetTransition change) {
    long from = wall(change.getDateTimeBefore());
    long to = wall(change.getDateTimeAfter());
    for (long stamp : local) {
      if (stamp >= from && stamp < to) {
        return true;
      }
    }
    return false;
  }

  private static boolean runsOver(long[] local, ZoneOffsetTransition change, long usual) {
    long repeatStart = wall(change.getDateTimeAfter());
    long repeatEnd = wall(change.getDateTimeBefore());
    boolean before = false;
    boolean inside = false;
    for (int i = 1; i < local.length; i++) {
      before |= local[i - 1] < repeatStart && local[i] - local[i - 1] <= usual;
      inside |= local[i - 1] >= repeatStart && local[i - 1] < repeatEnd;
      boolean nearby = local[i - 1] >= repeatStart - 7_200_000 && local[i - 1] <= repeatEnd;
      if (nearby && local[i] < local[i - 1]) {
        return false;
      }
      if (local[i - 1] < repeatEnd && local[i] >= repeatEnd) {
        return (before || inside) && local[i] - local[i - 1] <= usual;
      }
    }
    return false;
  }

  private static long wall(LocalDateTime time) {
    return time.toEpochSecond(ZoneOffset.UTC) * 1000L;
  }

  private static long[] followed(long[] local, ZoneRules rules) {
    long[] utc = new long[local.length];
    boolean later = false;
    long validFrom = Long.MAX_VALUE;
    long validTo = Long.MIN_VALUE;
    long offset = 0;
    for (int i = 0; i < local.length; i++) {
      if (i > 0 && local[i] < local[i - 1]) {
        later = true;
        validTo = Long.MIN_VALUE;
      }
      if (local[i] < validFrom || local[i] >= validTo) {
        LocalDateTime time = at(local[i]);
        ZoneOffsetTransition change = rules.getTransition(time);
        ZoneOffset found = rules.getOffset(time);
        if (change != null && change.isOverlap()) {
          found = later ? change.getOffsetAfter() : change.getOffsetBefore();
        } else {
          later = false;
        }
        offset = found.getTotalSeconds() * 1000L;
        // Offsets only change at full minutes: a minute's answer serves all its stamps.
        validFrom = Math.floorDiv(local[i], MINUTE_MS) * MINUTE_MS;
        validTo = validFrom + MINUTE_MS;
      }
      utc[i] = local[i] - offset;
    }
    return utc;
  }
}
