package org.firnline.logs.channel;

import java.time.Instant;

/**
 * When each row of a log was taken, in file order and never running backward: where the logger's
 * clock was set back, the reader has already shifted what follows.
 */
public final class TimeAxis {
  private final long[] epochMillis;

  private TimeAxis(long[] epochMillis) {
    this.epochMillis = epochMillis;
  }

  /**
   * An axis over the given moments.
   *
   * @param epochMillis UTC milliseconds since 1970, not decreasing; copied
   */
  public static TimeAxis of(long[] epochMillis) {
    for (int i = 1; i < epochMillis.length; i++) {
      if (epochMillis[i] < epochMillis[i - 1]) {
        throw new IllegalArgumentException(
            "time axis: row "
                + i
                + " lies before row "
                + (i - 1)
                + "; times must not run backward; shift the later clock segment first");
      }
    }
    return new TimeAxis(epochMillis.clone());
  }

  /** Number of rows. */
  public int size() {
    return epochMillis.length;
  }

  /** UTC milliseconds since 1970 of a row. */
  public long epochMillis(int index) {
    return epochMillis[index];
  }

  /** Instant of a row. */
  public Instant instant(int index) {
    return Instant.ofEpochMilli(epochMillis[index]);
  }

  /** Seconds since the first row. */
  public double elapsed_s(int index) {
    return (epochMillis[index] - epochMillis[0]) / 1000.0;
  }

  /** Seconds from the first row to the last; 0 for an empty or one-row log. */
  public double duration_s() {
    return epochMillis.length == 0 ? 0 : elapsed_s(epochMillis.length - 1);
  }

  /** The first row at or after an instant; {@link #size()} if there is none. */
  public int indexAtOrAfter(Instant instant) {
    long wanted = instant.toEpochMilli();
    int low = 0;
    int high = epochMillis.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (epochMillis[middle] < wanted) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
