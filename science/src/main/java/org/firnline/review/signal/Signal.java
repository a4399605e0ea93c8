package org.firnline.review.signal;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** One quantity on an even time grid, immutable; NaN where the log has no good sample. */
public final class Signal {
  /** Median absolute deviation to standard deviation for normal noise. */
  private static final double MAD_TO_SIGMA = 1.4826;

  private final double[] values;
  private final double step_s;

  /** Takes ownership of the array. */
  Signal(double[] values, double step_s) {
    this.values = values;
    this.step_s = step_s;
  }

  /** A signal of given values on an even grid; copied. */
  public static Signal of(double[] values, double step_s) {
    return new Signal(values.clone(), step_s);
  }

  /** Number of points. */
  public int size() {
    return values.length;
  }

  /** Distance of the points in seconds. */
  public double step_s() {
    return step_s;
  }

  /** Value at a point, NaN in a gap. */
  public double at(int point) {
    return values[point];
  }

  /** Each value changed by a rule. */
  public Signal map(DoubleUnaryOperator rule) {
    return new Signal(Arrays.stream(values).map(rule).toArray(), step_s);
  }

  /** Two signals joined point by point; a gap in either is a gap. */
  public Signal with(Signal other, DoubleBinaryOperator rule) {
    double[] joined = new double[values.length];
    for (int i = 0; i < joined.length; i++) {
      joined[i] = rule.applyAsDouble(values[i], other.values[i]);
    }
    return new Signal(joined, step_s);
  }

  /** The same signal with a gap from {@code from} up to but not including {@code to}. */
  public Signal without(int from, int to) {
    double[] cut = values.clone();
    int last = Math.min(to, cut.length);
    Arrays.fill(cut, Math.min(Math.max(0, from), Math.max(0, last)), Math.max(0, last), Double.NaN);
    return new Signal(cut, step_s);
  }

  /** Running mean over a window in seconds centered on each point; gaps are left out. */
  public Signal mean(double window_s) {
    int half = (int) Math.round(window_s / step_s / 2);
    double[] sums = new double[values.length + 1];
    int[] counts = new int[values.length + 1];
    for (int i = 0; i < values.length; i++) {
      boolean good = !Double.isNaN(values[i]);
      sums[i + 1] = sums[i] + (good ? values[i] : 0);
      counts[i + 1] = counts[i] + (good ? 1 : 0);
    }
    double[] means = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      int from = Math.max(0, i - half);
      int to = Math.min(values.length, i + half + 1);
      int count = counts[to] - counts[from];
      means[i] = count == 0 ? Double.NaN : (sums[to] - sums[from]) / count;
    }
    return new Signal(means, step_s);
  }

  /** Running median over a few points, an odd number; takes out single wild values. */
  public Signal median(int points) {
    int half = points / 2;
    double[] medians = new double[values.length];
    double[] window = new double[points];
    for (int i = 0; i < values.length; i++) {
      int count = 0;
      for (int j = Math.max(0, i - half); j <= Math.min(values.length - 1, i + half); j++) {
        if (!Double.isNaN(values[j])) {
          window[count++] = values[j];
        }
      }
      boolean gap = count == 0 || (Double.isNaN(values[i]) && count <= half);
      Arrays.sort(window, 0, count);
      medians[i] = gap ? Double.NaN : middle(window, count);
    }
    return new Signal(medians, step_s);
  }

  /** Change per second over a window centered on each point; NaN next to gaps. */
  public Signal slope(double window_s) {
    int half = (int) Math.max(1, Math.round(window_s / step_s / 2));
    double[] slopes = new double[values.length];
    for (int i = 0; i < slopes.length; i++) {
      int from = Math.max(0, i - half);
      int to = Math.min(values.length - 1, i + half);
      slopes[i] = to == from ? Double.NaN : (values[to] - values[from]) / ((to - from) * step_s);
    }
    return new Signal(slopes, step_s);
  }

  /** Middle value of the points from {@code from} up to but not including {@code to}. */
  public double medianIn(int from, int to) {
    return quantileIn(from, to, 0.5);
  }

  /** Quantile of the points from {@code from} up to but not including {@code to}; NaN if none. */
  public double quantileIn(int from, int to, double share) {
    int first = Math.max(0, Math.min(from, size()));
    int last = Math.max(first, Math.min(to, size()));
    double[] good =
        Arrays.stream(values, first, last).filter(value -> !Double.isNaN(value)).sorted().toArray();
    if (good.length == 0) {
      return Double.NaN;
    }
    double place = share * (good.length - 1);
    int low = (int) Math.floor(place);
    int high = Math.min(good.length - 1, low + 1);
    return good[low] + (place - low) * (good[high] - good[low]);
  }

  /** Number of good points from {@code from} up to but not including {@code to}. */
  public int goodIn(int from, int to) {
    int good = 0;
    for (int i = Math.max(0, from); i < Math.min(to, size()); i++) {
      good += Double.isNaN(values[i]) ? 0 : 1;
    }
    return good;
  }

  /**
   * Standard deviation of the noise from one point to the next, robust against steps and trends:
   * from the median of the absolute second differences.
   */
  public double noise() {
    double[] differences = new double[Math.max(0, values.length - 2)];
    int count = 0;
    for (int i = 1; i + 1 < values.length; i++) {
      double second = values[i + 1] - 2 * values[i] + values[i - 1];
      if (!Double.isNaN(second)) {
        differences[count++] = Math.abs(second);
      }
    }
    Arrays.sort(differences, 0, count);
    // A second difference of white noise has six times its variance.
    return count == 0 ? 0 : MAD_TO_SIGMA * middle(differences, count) / Math.sqrt(6);
  }

  /** First point in a range whose value is above a level; -1 if none. */
  public int firstAbove(double level, int from, int to) {
    for (int i = Math.max(0, from); i < Math.min(to, size()); i++) {
      if (values[i] > level) {
        return i;
      }
    }
    return -1;
  }

  /** First point in a range whose value is below a level; -1 if none. */
  public int firstBelow(double level, int from, int to) {
    for (int i = Math.max(0, from); i < Math.min(to, size()); i++) {
      if (values[i] < level) {
        return i;
      }
    }
    return -1;
  }

  /** Last point in a range whose value is above a level; -1 if none. */
  public int lastAbove(double level, int from, int to) {
    for (int i = Math.min(to, size()) - 1; i >= Math.max(0, from); i--) {
      if (values[i] > level) {
        return i;
      }
    }
    return -1;
  }

  /** Last point in a range whose value is below a level; -1 if none. */
  public int lastBelow(double level, int from, int to) {
    for (int i = Math.min(to, size()) - 1; i >= Math.max(0, from); i--) {
      if (values[i] < level) {
        return i;
      }
    }
    return -1;
  }

  private static double middle(double[] sorted, int count) {
    return count % 2 == 1 ? sorted[count / 2] : 0.5 * (sorted[count / 2 - 1] + sorted[count / 2]);
  }
}
