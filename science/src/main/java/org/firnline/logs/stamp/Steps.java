package org.firnline.logs.stamp;

import java.util.Arrays;

/** The usual step between rows. */
public final class Steps {
  private static final int ENOUGH = 200_000;

  private Steps() {}

  /** Median of the forward steps in milliseconds; 0 if there is none. */
  public static long median(long[] times) {
    int stride = Math.max(1, times.length / ENOUGH);
    long[] steps = new long[times.length / stride + 1];
    int count = 0;
    for (int i = 1; i < times.length && count < steps.length; i += stride) {
      long step = times[i] - times[i - 1];
      if (step > 0) {
        steps[count++] = step;
      }
    }
    if (count == 0) {
      return 0;
    }
    Arrays.sort(steps, 0, count);
    return steps[count / 2];
  }
}
