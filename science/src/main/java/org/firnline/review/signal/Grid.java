package org.firnline.review.signal;

import java.time.Instant;
import java.util.Arrays;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.TimeAxis;

/**
 * An even time grid over a log: as fine as the log's usual step, but never more than some tens of
 * thousands of points. Each point takes the median of the samples around it, so that one wild
 * sample moves nothing; a point without samples is a gap.
 */
public final class Grid {
  private static final int MOST_POINTS = 30_000;
  private static final double FINEST_STEP_S = 0.5;

  private final TimeAxis time;
  private final double step_s;
  private final int size;

  private Grid(TimeAxis time, double step_s) {
    this.time = time;
    this.step_s = step_s;
    this.size = time.size() == 0 ? 0 : (int) Math.floor(time.duration_s() / step_s + 0.5) + 1;
  }

  /** The grid that suits a log. */
  public static Grid over(TimeAxis time) {
    double coarse = time.duration_s() / MOST_POINTS;
    return new Grid(time, Math.max(Math.max(usualStep_s(time), coarse), FINEST_STEP_S));
  }

  /** Median step of a log in seconds; 60 if it has fewer than two rows. */
  public static double usualStep_s(TimeAxis time) {
    int count = time.size() - 1;
    if (count < 1) {
      return 60;
    }
    double[] steps = new double[count];
    for (int i = 0; i < count; i++) {
      steps[i] = (time.epochMillis(i + 1) - time.epochMillis(i)) / 1000.0;
    }
    Arrays.sort(steps);
    return Math.max(steps[count / 2], 1e-3);
  }

  /** Number of points. */
  public int size() {
    return size;
  }

  /** Distance of the points in seconds. */
  public double step_s() {
    return step_s;
  }

  /** Seconds from the start of the log to a point. */
  public double second(int point) {
    return point * step_s;
  }

  /** Seconds from the start of the log to a row of it. */
  public double secondOfRow(int row) {
    return time.elapsed_s(row);
  }

  /** Moment of a point, UTC. */
  public Instant instant(int point) {
    return instantAt(second(point));
  }

  /** Moment a number of seconds after the start of the log, UTC. */
  public Instant instantAt(double second) {
    return time.instant(0).plusMillis(Math.round(second * 1000));
  }

  /** The point nearest to a number of seconds, inside the grid. */
  public int pointAt(double second) {
    return (int) Math.max(0, Math.min(size - 1, Math.round(second / step_s)));
  }

  /** The point nearest to a moment, inside the grid. */
  public int pointAt(Instant moment) {
    return pointAt((moment.toEpochMilli() - time.epochMillis(0)) / 1000.0);
  }

  /** How many steps make a stretch of time, at least one. */
  public int steps(double seconds) {
    return (int) Math.max(1, Math.round(seconds / step_s));
  }

  /** A channel's samples on this grid, in the series' own SI unit. */
  public Signal sample(Series series) {
    double[] values = new double[size];
    Arrays.fill(values, Double.NaN);
    double[] bin = new double[16];
    int inBin = 0;
    int current = -1;
    for (int i = 0; i < time.size(); i++) {
      int point = pointAt(time.elapsed_s(i));
      if (point != current) {
        keep(values, current, bin, inBin);
        current = point;
        inBin = 0;
      }
      double value = series.value(i);
      if (!Double.isNaN(value)) {
        if (inBin == bin.length) {
          bin = Arrays.copyOf(bin, 2 * inBin);
        }
        bin[inBin++] = value;
      }
    }
    keep(values, current, bin, inBin);
    return new Signal(values, step_s);
  }

  private static void keep(double[] values, int point, double[] bin, int count) {
    if (point >= 0 && count > 0) {
      Arrays.sort(bin, 0, count);
      values[point] = count % 2 == 1 ? bin[count / 2] : 0.5 * (bin[count / 2 - 1] + bin[count / 2]);
    }
  }
}
