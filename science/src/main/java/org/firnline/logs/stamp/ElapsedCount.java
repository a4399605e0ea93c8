package org.firnline.logs.stamp;

/**
 * Elapsed times that may start again from near zero, as they do where each step of a recipe counts
 * its own time: each count goes on one usual step after the one before.
 */
public final class ElapsedCount {
  private static final double NEAR_STEPS = 1.5;

  private final long[] millis;
  private final int restarts;

  private ElapsedCount(long[] millis, int restarts) {
    this.millis = millis;
    this.restarts = restarts;
  }

  /** Elapsed milliseconds in file order, joined where the count starts again. */
  public static ElapsedCount of(long[] elapsed) {
    long usual = Math.max(1, Steps.median(elapsed));
    long[] joined = elapsed.clone();
    int restarts = 0;
    long shift = 0;
    for (int i = 1; i < joined.length; i++) {
      boolean startsAgain =
          elapsed[i] < elapsed[i - 1] && elapsed[i] <= elapsed[0] + NEAR_STEPS * usual;
      if (startsAgain) {
        shift = joined[i - 1] + usual - elapsed[i];
        restarts++;
      }
      joined[i] = elapsed[i] + shift;
    }
    return new ElapsedCount(joined, restarts);
  }

  /** UTC milliseconds of all rows, counted from a start. */
  public long[] from(long start) {
    long[] utc = new long[millis.length];
    for (int i = 0; i < utc.length; i++) {
      utc[i] = start + millis[i];
    }
    return utc;
  }

  /** What is to be said about counts that start again; empty if none does. */
  public String rule() {
    return restarts == 0
        ? ""
        : "; the count starts again " + (restarts == 1 ? "once" : restarts + " times");
  }
}
