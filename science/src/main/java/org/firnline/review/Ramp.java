package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/**
 * A change of the shelf from one hold to another.
 *
 * @param start first point of the change
 * @param end last point of the change
 * @param from_K shelf before, K
 * @param to_K shelf after, K
 */
record Ramp(int start, int end, double from_K, double to_K) {
  private static final double WINDOW_S = 600;
  private static final double JOIN_S = 1200;
  private static final double SMALLEST_K = 3;

  /** Slower than any ramp a recipe asks for, faster than a hold drifts: 0.03 K/min. */
  private static final double SLOWEST_K_PER_S = 0.03 / 60;

  boolean isUp() {
    return to_K > from_K;
  }

  /** The ramps of a run's shelf, by its set point if the log holds one. */
  static List<Ramp> of(Run run) {
    Optional<Trace> shelf = run.first(Role.SHELF_SET_POINT).or(() -> run.first(Role.SHELF));
    if (shelf.isEmpty()) {
      return List.of();
    }
    Signal signal = shelf.get().signal();
    boolean commanded = shelf.get().channel().role() == Role.SHELF_SET_POINT;
    Signal smooth = commanded ? signal : signal.median(5).mean(WINDOW_S / 2);
    double noise = commanded ? 0 : signal.noise() / Math.sqrt(run.grid().steps(WINDOW_S / 2));
    double slowest = Math.max(SLOWEST_K_PER_S, 4 * noise / WINDOW_S);
    Signal slope = smooth.slope(WINDOW_S);
    List<Ramp> ramps = joined(smooth, slope, slowest, run.grid().steps(JOIN_S));
    return commanded ? ramps : ramps.stream().map(ramp -> ramp.sharpened(signal)).toList();
  }

  /** The same change with its start where the noisy shelf leaves its level. */
  private Ramp sharpened(Signal shelf) {
    int half = (int) Math.max(3, Math.round(WINDOW_S / shelf.step_s()));
    int from = Math.max(0, start - 3 * half);
    int to = Math.min(Math.min(end, start + 3 * half), shelf.size());
    return to - from < 6
        ? this
        : new Ramp(Math.min(Hinge.of(shelf, from, to), end), end, from_K, to_K);
  }

  private static List<Ramp> joined(Signal shelf, Signal slope, double slowest, int join) {
    List<Ramp> ramps = new ArrayList<>();
    int start = -1;
    int last = -1;
    double sign = 0;
    for (int i = 0; i < slope.size(); i++) {
      double rate = slope.at(i);
      boolean moves = Math.abs(rate) > slowest;
      boolean ends = start >= 0 && (i - last > join || (moves && Math.signum(rate) != sign));
      if (ends) {
        add(ramps, shelf, start, last);
        start = -1;
      }
      if (moves) {
        start = start < 0 ? i : start;
        sign = Math.signum(rate);
        last = i;
      }
    }
    if (start >= 0) {
      add(ramps, shelf, start, last);
    }
    return ramps;
  }

  /** The slope looks half a window ahead and behind: the change itself is that much shorter. */
  private static void add(List<Ramp> ramps, Signal shelf, int start, int last) {
    int half = (int) Math.max(1, Math.round(WINDOW_S / shelf.step_s() / 2));
    int from = Math.max(0, Math.min(start + half - 1, last));
    int to = Math.min(shelf.size() - 1, Math.max(last - half + 1, from));
    double before = shelf.at(from);
    double after = shelf.at(to);
    if (Math.abs(after - before) >= SMALLEST_K) {
      ramps.add(new Ramp(from, to, before, after));
    }
  }
}
