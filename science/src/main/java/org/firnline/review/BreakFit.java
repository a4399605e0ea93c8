package org.firnline.review;

import org.firnline.review.signal.Signal;

/**
 * When a gap between a vessel and its surroundings starts to close: a straight line up to the
 * break, from there an exponential approach to a rest. The break, the time constant, the line and
 * the rest are found by least squares over a grid of breaks and time constants.
 *
 * <p>Assumes one break in the window, and that the vessel warms as one body after its ice is gone.
 *
 * <p>Source: closed form of a body of constant heat capacity that warms toward constant
 * surroundings; our own choice of method.
 */
final class BreakFit {
  private static final double[] TIME_CONSTANTS_S = {
    30, 60, 120, 200, 300, 450, 650, 900, 1300, 1800, 2500, 3600, 5400
  };
  private static final int MOST_POINTS = 400;

  private final double[] time;
  private final double[] gap;

  private BreakFit(double[] time, double[] gap) {
    this.time = time;
    this.gap = gap;
  }

  /**
   * The best break.
   *
   * @param second seconds from the start of the log
   * @param early_s earliest break whose misfit is not clearly worse
   * @param late_s latest break whose misfit is not clearly worse
   */
  record Break(double second, double early_s, double late_s) {}

  /** Fits the gap between two points of a signal; the window must hold the break. */
  static Break find(Signal gap, int from, int to) {
    int stride = Math.max(1, (to - from) / MOST_POINTS);
    int count = 0;
    double[] time = new double[to - from];
    double[] value = new double[to - from];
    for (int i = from; i < to; i += stride) {
      double here = stride == 1 ? gap.at(i) : gap.medianIn(i, Math.min(to, i + stride));
      if (!Double.isNaN(here)) {
        time[count] = (i + (stride - 1) / 2.0) * gap.step_s();
        value[count++] = here;
      }
    }
    return new BreakFit(java.util.Arrays.copyOf(time, count), java.util.Arrays.copyOf(value, count))
        .best();
  }

  private Break best() {
    double[] misfit = new double[time.length];
    int best = 0;
    for (int i = 0; i < time.length; i++) {
      misfit[i] = Double.POSITIVE_INFINITY;
      for (double constant : TIME_CONSTANTS_S) {
        misfit[i] = Math.min(misfit[i], misfit(time[i], constant));
      }
      best = misfit[i] < misfit[best] ? i : best;
    }
    // A misfit larger by four variances of one point is two standard errors away.
    double limit = misfit[best] * (1 + 4.0 / Math.max(1, time.length - 5)) + 1e-12;
    int early = best;
    int late = best;
    while (early > 0 && misfit[early - 1] <= limit) {
      early--;
    }
    while (late + 1 < time.length && misfit[late + 1] <= limit) {
      late++;
    }
    return new Break(time[best], time[early], time[late]);
  }

  /** Sum of squares with the line (level, trend) and the rest solved for. */
  private double misfit(double at, double constant) {
    double[][] normal = new double[3][4];
    double squares = 0;
    for (int i = 0; i < time.length; i++) {
      double since = time[i] - at;
      double remaining = since <= 0 ? 1 : Math.exp(-since / constant);
      double[] x = {remaining, since <= 0 ? since / 3600 : 0, 1 - remaining};
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 3; c++) {
          normal[r][c] += x[r] * x[c];
        }
        normal[r][3] += x[r] * gap[i];
      }
      squares += gap[i] * gap[i];
    }
    double[] right = {normal[0][3], normal[1][3], normal[2][3]};
    if (!solve(normal)) {
      return Double.POSITIVE_INFINITY;
    }
    double explained = 0;
    for (int r = 0; r < 3; r++) {
      explained += normal[r][3] * right[r];
    }
    return Math.max(0, squares - explained);
  }

  /** Gauss elimination of three equations in place; false if they do not determine all three. */
  private static boolean solve(double[][] m) {
    for (int p = 0; p < 3; p++) {
      if (Math.abs(m[p][p]) < 1e-9) {
        return false;
      }
      for (int r = 0; r < 3; r++) {
        if (r != p) {
          double factor = m[r][p] / m[p][p];
          for (int c = p; c < 4; c++) {
            m[r][c] -= factor * m[p][c];
          }
        }
      }
    }
    for (int p = 0; p < 3; p++) {
      m[p][3] /= m[p][p];
    }
    return true;
  }
}
