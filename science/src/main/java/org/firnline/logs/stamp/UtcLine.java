package org.firnline.logs.stamp;

/** Times of rows in UTC milliseconds, immutable. */
public final class UtcLine {
  private final long[] millis;

  /** Takes ownership of the array. */
  UtcLine(long[] millis) {
    this.millis = millis;
  }

  /** Number of rows. */
  public int size() {
    return millis.length;
  }

  /** UTC milliseconds since 1970 of a row. */
  public long millis(int row) {
    return millis[row];
  }

  /** A copy of all times. */
  public long[] toArray() {
    return millis.clone();
  }
}
