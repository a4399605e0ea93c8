package org.firnline.app.run;

import java.util.Arrays;
import java.util.BitSet;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.TimeAxis;

/**
 * Which rows of a log share a column of pixels. A channel is drawn as the lowest and highest value
 * of each column, so that no spike is lost; gaps in time stay gaps. The columns are the same for
 * all channels of a log.
 */
final class Columns {
  private static final double SHORTEST_GAP_S = 120;
  private static final int GAP_IN_INTERVALS = 3;
  private static final int INTERVALS_SEEN = 2_000;

  private final TimeAxis time;
  private final int[] firstRows;
  private final BitSet afterGap;
  private final int count;

  private Columns(TimeAxis time, int[] firstRows, BitSet afterGap, int count) {
    this.time = time;
    this.firstRows = firstRows;
    this.afterGap = afterGap;
    this.count = count;
  }

  /** Takes the columns of one channel in order of time. */
  interface Line {
    /**
     * One column.
     *
     * @param low lowest value, SI; NaN where the line is broken
     * @param high highest value, SI; NaN where the line is broken
     */
    void column(double low, double high);
  }

  /** Takes the times of the columns in order. */
  interface Times {
    /**
     * One column.
     *
     * @param t_s its first row, seconds since the log's first row
     */
    void column(double t_s);
  }

  /**
   * Columns over rows {@code from} (inclusive) to {@code to} (exclusive).
   *
   * @param pixels how many columns fit; 1 or more
   */
  static Columns of(TimeAxis time, int from, int to, int pixels) {
    if (to <= from) {
      return new Columns(time, new int[] {from}, new BitSet(), 0);
    }
    double gap_s = Math.max(SHORTEST_GAP_S, GAP_IN_INTERVALS * medianInterval(time));
    double start = time.elapsed_s(from);
    double width = Math.max(1e-9, (time.elapsed_s(to - 1) - start) / pixels);
    int[] firstRows = new int[Math.min(to - from, 2 * pixels + 2) + 1];
    BitSet afterGap = new BitSet();
    int count = 0;
    double end = Double.NEGATIVE_INFINITY;
    double previous = from > 0 ? time.elapsed_s(from - 1) : start;
    for (int row = from; row < to; row++) {
      double second = time.elapsed_s(row);
      boolean gap = second - previous > gap_s;
      if (second >= end || gap) {
        if (count + 1 == firstRows.length) {
          firstRows = Arrays.copyOf(firstRows, 2 * firstRows.length);
        }
        afterGap.set(count, gap);
        firstRows[count++] = row;
        end = start + (Math.floor((second - start) / width) + 1) * width;
      }
      previous = second;
    }
    firstRows[count] = to;
    return new Columns(time, firstRows, afterGap, count);
  }

  /** The times of all columns; a gap adds one without a value before the column after it. */
  void times(Times times) {
    for (int column = 0; column < count; column++) {
      double t_s = time.elapsed_s(firstRows[column]);
      if (afterGap.get(column)) {
        times.column(t_s);
      }
      times.column(t_s);
    }
  }

  /** A channel, column by column, in step with {@link #times}. */
  void reduce(Series series, Line line) {
    for (int column = 0; column < count; column++) {
      if (afterGap.get(column)) {
        line.column(Double.NaN, Double.NaN);
      }
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int row = firstRows[column]; row < firstRows[column + 1]; row++) {
        double value = series.value(row);
        // Comparisons with NaN are false, so missing samples leave both as they are.
        low = value < low ? value : low;
        high = value > high ? value : high;
      }
      boolean empty = low > high;
      line.column(empty ? Double.NaN : low, empty ? Double.NaN : high);
    }
  }

  private static double medianInterval(TimeAxis time) {
    int intervals = time.size() - 1;
    if (intervals < 1) {
      return 0;
    }
    int stride = Math.max(1, intervals / INTERVALS_SEEN);
    double[] sample = new double[(intervals + stride - 1) / stride];
    for (int i = 0; i < sample.length; i++) {
      int row = i * stride;
      sample[i] = time.elapsed_s(row + 1) - time.elapsed_s(row);
    }
    Arrays.sort(sample);
    return sample[sample.length / 2];
  }
}
