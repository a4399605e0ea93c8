package org.firnline.app.run;

import java.util.Arrays;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.TimeAxis;

/**
 * Shrinks a long series to what a picture can show: the lowest and highest value in each column of
 * pixels, so that no spike is lost. Gaps in time stay gaps.
 */
final class Reduction {
  private static final double SHORTEST_GAP_S = 120;
  private static final int GAP_IN_INTERVALS = 3;

  private final TimeAxis time;
  private final double gap_s;

  Reduction(TimeAxis time) {
    this.time = time;
    this.gap_s = Math.max(SHORTEST_GAP_S, GAP_IN_INTERVALS * medianInterval(time));
  }

  /** Takes the points of a reduced series in order of time. */
  interface Line {
    /**
     * One column of pixels.
     *
     * @param t_s seconds since the log's first row
     * @param low lowest value, SI; NaN where the line is broken
     * @param high highest value, SI; NaN where the line is broken
     */
    void point(double t_s, double low, double high);
  }

  /**
   * Reduces rows {@code from} (inclusive) to {@code to} (exclusive).
   *
   * @param columns how many pixel columns there are; 1 or more
   */
  void reduce(Series series, int from, int to, int columns, Line line) {
    if (to <= from) {
      return;
    }
    double start = time.elapsed_s(from);
    double width = Math.max(1e-9, (time.elapsed_s(to - 1) - start) / columns);
    int row = from;
    while (row < to) {
      row = column(series, row, to, start, width, line);
    }
  }

  /** Takes all rows that share the pixel column of {@code row}; gives the row after them. */
  private int column(Series series, int row, int to, double start, double width, Line line) {
    double first = time.elapsed_s(row);
    double end = start + (Math.floor((first - start) / width) + 1) * width;
    if (row > 0 && first - time.elapsed_s(row - 1) > gap_s) {
      line.point(first, Double.NaN, Double.NaN);
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    int next = row;
    while (next < to
        && (next == row
            || (time.elapsed_s(next) < end
                && time.elapsed_s(next) - time.elapsed_s(next - 1) <= gap_s))) {
      double value = series.value(next);
      if (!Double.isNaN(value)) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
      next++;
    }
    boolean empty = low > high;
    line.point(first, empty ? Double.NaN : low, empty ? Double.NaN : high);
    return next;
  }

  private static double medianInterval(TimeAxis time) {
    int intervals = time.size() - 1;
    if (intervals < 1) {
      return 0;
    }
    int stride = Math.max(1, intervals / 2_000);
    double[] sample = new double[(intervals + stride - 1) / stride];
    for (int i = 0; i < sample.length; i++) {
      int row = i * stride;
      sample[i] = time.elapsed_s(row + 1) - time.elapsed_s(row);
    }
    Arrays.sort(sample);
    return sample[sample.length / 2];
  }
}
