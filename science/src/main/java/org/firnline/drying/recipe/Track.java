package org.firnline.drying.recipe;

import java.util.Arrays;
import java.util.List;

/**
 * A setting over time: straight lines from point to point, constant before the first and after the
 * last. Two points at one time are a step.
 */
public final class Track {

  private final double[] times;
  private final double[] values;

  /**
   * A point of a track.
   *
   * @param time s
   * @param value SI
   */
  public record Point(double time, double value) {}

  private Track(double[] times, double[] values) {
    this.times = times;
    this.values = values;
  }

  /**
   * The track through {@code points}.
   *
   * @param points at least one, times never falling
   */
  public static Track through(List<Point> points) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a track without points");
    }
    for (int point = 1; point < points.size(); point++) {
      if (points.get(point).time() < points.get(point - 1).time()) {
        throw new IllegalArgumentException(
            "point " + (point + 1) + " of a track lies before point " + point);
      }
    }
    return new Track(
        points.stream().mapToDouble(Point::time).toArray(),
        points.stream().mapToDouble(Point::value).toArray());
  }

  /** The same setting for ever. */
  public static Track constant(double value) {
    return through(List.of(new Point(0, value)));
  }

  /** The setting at {@code time_s}; at a step the value after it. */
  public double at(double time_s) {
    int last = times.length - 1;
    if (time_s >= times[last]) {
      return values[last];
    }
    if (time_s < times[0]) {
      return values[0];
    }
    int after = 1;
    while (times[after] <= time_s) {
      after++;
    }
    double share = (time_s - times[after - 1]) / (times[after] - times[after - 1]);
    return values[after - 1] + share * (values[after] - values[after - 1]);
  }

  /** Times at which the setting bends or steps, s. */
  public double[] bends() {
    return Arrays.copyOf(times, times.length);
  }
}
