package org.firnline.review;

import org.firnline.review.signal.Signal;

/** Where a level signal starts to slope: level up to the hinge, a straight line from there. */
final class Hinge {
  private static final int MOST_POINTS = 120;

  private Hinge() {}

  /** The point between {@code from} and {@code to} that leaves least squares of misfit. */
  static int of(Signal signal, int from, int to) {
    int stride = Math.max(1, (to - from) / MOST_POINTS);
    int best = from;
    double least = Double.POSITIVE_INFINITY;
    for (int hinge = from; hinge < to; hinge += stride) {
      double misfit = misfit(signal, from, to, hinge, stride);
      if (misfit < least) {
        least = misfit;
        best = hinge;
      }
    }
    return best;
  }

  /** Least squares of level + slope × (i − hinge)⁺ over the window. */
  private static double misfit(Signal signal, int from, int to, int hinge, int stride) {
    double n = 0;
    double x1 = 0;
    double x2 = 0;
    double y1 = 0;
    double y2 = 0;
    double xy = 0;
    for (int i = from; i < to; i += stride) {
      double y = signal.at(i);
      if (!Double.isNaN(y)) {
        double x = Math.max(0, i - hinge);
        n++;
        x1 += x;
        x2 += x * x;
        y1 += y;
        y2 += y * y;
        xy += x * y;
      }
    }
    double spread = x2 - x1 * x1 / n;
    if (!(spread > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double joint = xy - x1 * y1 / n;
    return y2 - y1 * y1 / n - joint * joint / spread;
  }
}
