package org.firnline.logs.stamp;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts the stamps of a file on one UTC line that never runs backward, in file order: rows are never
 * sorted by what the logger's clock says.
 */
public final class ClockLine {
  private static final long DAY_MS = 86_400_000;
  private static final long MINUTE_MS = 60_000;

  private final ZoneId zone;
  private final boolean neverChanges;

  /**
   * A line in a zone.
   *
   * @param zone zone of stamps without an offset
   * @param neverChanges whether the logger's clock knows no summer time
   */
  public ClockLine(ZoneId zone, boolean neverChanges) {
    this.zone = zone;
    this.neverChanges = neverChanges;
  }

  /**
   * UTC times of stamps.
   *
   * @param stamps the stamps in file order
   * @param order order of day, month and year
   * @param firstDay date of the first row, for stamps without dates
   */
  public UtcTimes place(StampColumn stamps, DateFields.Order order, LocalDate firstDay) {
    long[] local = local(stamps, order, firstDay);
    boolean offsetsWritten = stamps.size() > 0 && stamps.offset_min(0) != Stamp.NO_OFFSET;
    if (offsetsWritten) {
      for (int i = 0; i < local.length; i++) {
        int offset = stamps.offset_min(i) == Stamp.NO_OFFSET ? 0 : stamps.offset_min(i);
        local[i] -= offset * MINUTE_MS;
      }
      int first = stamps.offset_min(0);
      ZoneId written = first == 0 ? ZoneId.of("UTC") : ZoneOffset.ofTotalSeconds(first * 60);
      return straightened(local, written, "offset written in each stamp", stamps.secondsWritten());
    }
    ZoneClock clock = new ZoneClock(zone, neverChanges);
    long[] utc = clock.toUtc(local);
    return straightened(utc, zone, clock.rule(), stamps.secondsWritten());
  }

  /** UTC times already known in milliseconds, put in a line that never runs backward. */
  public UtcTimes place(long[] utc, String rule) {
    return straightened(utc.clone(), zone, rule, true);
  }

  /** Local times in milliseconds as if they were UTC, put on a UTC line. */
  public UtcTimes placeLocal(long[] local, String rule) {
    ZoneClock clock = new ZoneClock(zone, neverChanges);
    long[] utc = clock.toUtc(local);
    return straightened(utc, zone, rule + "; " + clock.rule(), true);
  }

  private static long[] local(StampColumn stamps, DateFields.Order order, LocalDate firstDay) {
    List<DateFields> dates = stamps.dates();
    long[] days = new long[dates.size()];
    for (int i = 0; i < days.length; i++) {
      days[i] = dates.get(i).in(order).orElse(firstDay).toEpochDay();
    }
    long[] local = new long[stamps.size()];
    long rolled = firstDay.toEpochDay();
    for (int i = 0; i < local.length; i++) {
      long clock = stamps.clock_ms(i);
      if (stamps.dateOf(i) >= 0) {
        local[i] = days[stamps.dateOf(i)] * DAY_MS + clock;
      } else {
        // A clock time that falls by more than half a day has passed midnight.
        rolled += i > 0 && stamps.clock_ms(i - 1) - clock > DAY_MS / 2 ? 1 : 0;
        local[i] = rolled * DAY_MS + clock;
      }
    }
    return local;
  }

  private static UtcTimes straightened(
      long[] utc, ZoneId zone, String rule, boolean secondsWritten) {
    long usual = Steps.median(utc);
    List<ClockChange> changes = new ArrayList<>();
    long shift = 0;
    for (int i = 1; i < utc.length; i++) {
      long next = utc[i] + shift;
      if (next < utc[i - 1]) {
        long expected = utc[i - 1] + usual;
        changes.add(new ClockChange(i, next - expected));
        shift += expected - next;
        next = expected;
      }
      utc[i] = next;
    }
    int spread = spreadEqual(utc, secondsWritten ? 1000 : MINUTE_MS);
    return new UtcTimes(new UtcLine(utc), zone, rule, changes, spread);
  }

  /** Equal stamps of a coarse clock are spread evenly inside its resolution. */
  private static int spreadEqual(long[] utc, long resolution) {
    int spread = 0;
    int i = 0;
    while (i < utc.length) {
      int end = i + 1;
      while (end < utc.length && utc[end] == utc[i]) {
        end++;
      }
      int count = end - i;
      long room = end < utc.length ? Math.min(resolution, utc[end] - utc[i]) : resolution;
      for (int j = 1; j < count; j++) {
        utc[i + j] = utc[i] + room * j / count;
      }
      spread += count - 1;
      i = end;
    }
    return spread;
  }
}
