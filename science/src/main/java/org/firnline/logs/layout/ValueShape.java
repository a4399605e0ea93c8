package org.firnline.logs.layout;

import java.util.Arrays;
import java.util.Optional;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Series;

/**
 * What the good values of a column look like, as written.
 *
 * @param count how many were looked at
 * @param low smallest value
 * @param median middle value
 * @param high largest value
 * @param stillShare share of steps without any change, 0 to 1
 * @param straightShare share of steps that go on exactly as the step before, 0 to 1: a set point
 *     holds or ramps, a sensor wavers
 * @param wholeNumbers whether all values are whole numbers
 */
public record ValueShape(
    int count,
    double low,
    double median,
    double high,
    double stillShare,
    double straightShare,
    boolean wholeNumbers) {
  private static final int ENOUGH = 20_000;

  /** Looks at a series, at most at some twenty thousand of its values in unbroken stretches. */
  public static Optional<ValueShape> of(Series series) {
    int size = series.size();
    int stretch = 64;
    int skip = Math.max(1, size / ENOUGH);
    double[] values = new double[Math.min(size, ENOUGH + stretch * 2)];
    int count = 0;
    int still = 0;
    int straight = 0;
    int steps = 0;
    boolean whole = true;
    for (int block = 0; block < size; block += stretch * skip) {
      double before = Double.NaN;
      double step = Double.NaN;
      for (int i = block; i < Math.min(size, block + stretch) && count < values.length; i++) {
        if (series.quality(i) != Quality.GOOD) {
          continue;
        }
        double value = series.asWritten(i);
        values[count++] = value;
        whole &= value == Math.rint(value);
        if (!Double.isNaN(before)) {
          double next = value - before;
          steps++;
          still += next == 0 ? 1 : 0;
          straight += Math.abs(next - step) < 1e-9 * Math.max(1, Math.abs(value)) ? 1 : 0;
          step = next;
        }
        before = value;
      }
    }
    if (count == 0) {
      return Optional.empty();
    }
    double[] sorted = Arrays.copyOf(values, count);
    Arrays.sort(sorted);
    double all = Math.max(1, steps);
    return Optional.of(
        new ValueShape(
            count,
            sorted[0],
            sorted[count / 2],
            sorted[count - 1],
            still / all,
            straight / all,
            whole));
  }

  /** Whether the values are whole numbers that grow by the same step, as a counter's do. */
  public boolean countsUp() {
    return count > 5 && wholeNumbers && high > low && stillShare == 0 && straightShare > 0.9;
  }

  /** Whether the values hold or ramp exactly, as set points do, and change at all. */
  public boolean looksCommanded() {
    return count > 20 && high > low && straightShare > 0.8;
  }
}
