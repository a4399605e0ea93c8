package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * A run of grid points.
 *
 * @param start first point
 * @param end last point
 */
record Stretch(int start, int end) {

  double duration_s(Grid grid) {
    return (end - start + 1) * grid.step_s();
  }

  boolean overlaps(Stretch other) {
    return start <= other.end && other.start <= end;
  }

  /** Stretches above a level; those nearer to each other than {@code join} points are one. */
  static List<Stretch> above(Signal signal, double level, int from, int to, int join) {
    List<Stretch> stretches = new ArrayList<>();
    int start = signal.firstAbove(level, from, to);
    while (start >= 0) {
      int last = start;
      for (int i = start; i < Math.min(to, signal.size()) && i - last <= join; i++) {
        last = signal.at(i) > level ? i : last;
      }
      stretches.add(new Stretch(start, last));
      start = signal.firstAbove(level, last + 1, to);
    }
    return stretches;
  }
}
