package org.firnline.drying.gauge;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The ratio of a thermal-conductivity gauge to a true pressure over a run.
 *
 * <p>While the load gives off vapor the ratio stands on a plateau; it falls to about 1 as vessel
 * after vessel runs dry. The marks are looked for in a window between evacuation and the ramp to
 * secondary drying, because both move the ratio for reasons of their own.
 *
 * <p>Source: that onset, midpoint and offset are marked on this curve: Patel, Doen &amp; Pikal,
 * AAPS PharmSciTech 11, 73 (2010), abstract; the shares of 90, 50 and 10 % are this program's
 * choice, no published source.
 *
 * @param points at least two, times rising
 */
public record RatioCurve(List<RatioPoint> points) {

  private static final double ONSET = 0.9;
  private static final double MIDPOINT = 0.5;
  private static final double END = 0.1;

  /** Below this excess a plateau is noise, not vapor. */
  private static final double LEAST_EXCESS = 0.05;

  public RatioCurve {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a ratio curve needs two points or more");
    }
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).time() >= points.get(i - 1).time())) {
        throw new IllegalArgumentException(
            "ratio at " + points.get(i).time() + " s is out of order");
      }
    }
  }

  /** The part of this curve from {@code from_s} to {@code to_s}. */
  public RatioCurve within(double from_s, double to_s) {
    return new RatioCurve(
        points.stream().filter(point -> point.time() >= from_s && point.time() <= to_s).toList());
  }

  /** The greatest ratio; right for computed curves, too high by the noise of measured ones. */
  public double greatest() {
    return points.stream().mapToDouble(RatioPoint::ratio).max().orElseThrow();
  }

  /** The median ratio: a plateau that noise does not lift, of a window that is all plateau. */
  public double median() {
    double[] sorted = points.stream().mapToDouble(RatioPoint::ratio).sorted().toArray();
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  /** The marks from the greatest ratio. */
  public EndMarks marks() {
    return marks(greatest());
  }

  /**
   * The marks from a given plateau; all empty where the plateau is too near 1 to fall from.
   *
   * @param plateau ratio while the load gives off vapor
   */
  public EndMarks marks(double plateau) {
    if (plateau - 1 < LEAST_EXCESS) {
      return new EndMarks(
          plateau, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
    return new EndMarks(
        plateau,
        lastAbove(1 + ONSET * (plateau - 1)),
        lastAbove(1 + MIDPOINT * (plateau - 1)),
        lastAbove(1 + END * (plateau - 1)));
  }

  /** Last time at {@code level} on the way down, between two points by a straight line. */
  private OptionalDouble lastAbove(double level) {
    for (int i = points.size() - 1; i >= 0; i--) {
      RatioPoint here = points.get(i);
      if (here.ratio() >= level) {
        return i == points.size() - 1
            ? OptionalDouble.empty()
            : OptionalDouble.of(crossing(here, points.get(i + 1), level));
      }
    }
    return OptionalDouble.empty();
  }

  private static double crossing(RatioPoint above, RatioPoint below, double level) {
    double share = (above.ratio() - level) / (above.ratio() - below.ratio());
    return above.time() + share * (below.time() - above.time());
  }
}
