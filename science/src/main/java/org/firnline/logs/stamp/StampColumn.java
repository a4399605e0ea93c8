package org.firnline.logs.stamp;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The stamps of all rows while a file is read: dates undecided, few of them, each kept once. */
public final class StampColumn {
  private static final int NO_DATE = -1;

  private final List<DateFields> dates = new ArrayList<>();
  private final Map<DateFields, Integer> known = new HashMap<>();
  private DateFields lastDate = new DateFields(-1, -1, -1, 0, 0, 0, ' ');
  private int lastIndex = NO_DATE;
  private int[] dateOf = new int[1024];
  private long[] clock = new long[1024];
  private int[] offsets = new int[0];
  private int size;
  private boolean secondsWritten;

  /** Adds the stamp of a row. */
  public void add(Stamp stamp) {
    add(stamp, stamp);
  }

  /** Adds the stamp of a row whose date and clock time stand in two cells. */
  public void add(DateFields date, Stamp time) {
    grow();
    dateOf[size] = indexOf(date);
    finish(time);
  }

  private void add(Stamp date, Stamp time) {
    grow();
    dateOf[size] = date.kind() == Stamp.Kind.TIME ? NO_DATE : indexOf(date);
    finish(time);
  }

  private void finish(Stamp time) {
    clock[size] = time.millis();
    secondsWritten |= time.secondsWritten();
    if (time.offset_min() != Stamp.NO_OFFSET && offsets.length == 0) {
      offsets = new int[clock.length];
      Arrays.fill(offsets, Stamp.NO_OFFSET);
    }
    if (offsets.length > 0) {
      offsets[size] = time.offset_min();
    }
    size++;
  }

  private int indexOf(Stamp stamp) {
    boolean same = stamp.sameDateAs(lastDate);
    return same ? lastIndex : indexOf(stamp.dateFields());
  }

  private int indexOf(DateFields date) {
    lastDate = date;
    lastIndex =
        known.computeIfAbsent(
            date,
            fresh -> {
              dates.add(fresh);
              return dates.size() - 1;
            });
    return lastIndex;
  }

  private void grow() {
    if (size == clock.length) {
      clock = Arrays.copyOf(clock, 2 * size);
      dateOf = Arrays.copyOf(dateOf, 2 * size);
      if (offsets.length > 0) {
        offsets = Arrays.copyOf(offsets, 2 * size);
        Arrays.fill(offsets, size, offsets.length, Stamp.NO_OFFSET);
      }
    }
  }

  /** Number of rows. */
  public int size() {
    return size;
  }

  /** The distinct dates in order of first appearance. */
  public List<DateFields> dates() {
    return List.copyOf(dates);
  }

  /** Position of a row's date among the distinct dates; -1 if the row has none. */
  public int dateOf(int row) {
    return dateOf[row];
  }

  /** Clock or elapsed time of a row in milliseconds. */
  public long clock_ms(int row) {
    return clock[row];
  }

  /** Offset of a row from UTC in minutes, or {@link Stamp#NO_OFFSET}. */
  public int offset_min(int row) {
    return offsets.length == 0 ? Stamp.NO_OFFSET : offsets[row];
  }

  /** Whether any row writes seconds; if not, stamps are good to a minute. */
  public boolean secondsWritten() {
    return secondsWritten;
  }
}
