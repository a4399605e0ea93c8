package org.firnline.logs.stamp;

/**
 * The last stamp read by a {@link StampScan}: fields as written, nothing decided yet. Mutable and
 * reused, because a million of them are read in a row.
 */
public final class Stamp {
  /** What a cell holds. */
  public enum Kind {
    NONE,
    DATE,
    TIME,
    DATE_TIME
  }

  /** Marks a stamp without an offset from UTC. */
  public static final int NO_OFFSET = Integer.MIN_VALUE;

  Kind kind = Kind.NONE;
  final int[] date = new int[3];
  final int[] dateDigits = new int[3];
  int month;
  char separator;
  long millis;
  int offset_min = NO_OFFSET;
  boolean secondsWritten;
  boolean fractionWritten;
  boolean twelveHour;

  void clear() {
    kind = Kind.NONE;
    date[0] = date[1] = date[2] = -1;
    dateDigits[0] = dateDigits[1] = dateDigits[2] = 0;
    month = 0;
    separator = ' ';
    millis = 0;
    offset_min = NO_OFFSET;
    secondsWritten = false;
    fractionWritten = false;
    twelveHour = false;
  }

  /** What the cell holds. */
  public Kind kind() {
    return kind;
  }

  /** Clock or elapsed time in milliseconds; 0 if the cell holds none. */
  public long millis() {
    return millis;
  }

  /** Offset from UTC in minutes, or {@link #NO_OFFSET}. */
  public int offset_min() {
    return offset_min;
  }

  /** Whether seconds are written, so that the resolution is finer than a minute. */
  public boolean secondsWritten() {
    return secondsWritten;
  }

  /** Whether the time carries AM or PM. */
  public boolean twelveHour() {
    return twelveHour;
  }

  /** The date as written, for {@link DateFields}. */
  public DateFields dateFields() {
    return new DateFields(
        date[0], date[1], date[2], dateDigits[0], dateDigits[2], month, separator);
  }

  /** Whether the date is written in the same figures. */
  public boolean sameDateAs(DateFields other) {
    return date[0] == other.first()
        && date[1] == other.second()
        && date[2] == other.third()
        && month == other.month()
        && dateDigits[0] == other.firstDigits();
  }
}
