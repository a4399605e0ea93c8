package org.firnline.review;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * The end of ice per probed vessel: while ice sublimes the thermometer stands below the shelf (or
 * the room, for a flask); when the ice under it is gone the gap closes. The last closing of the gap
 * is found, then the moment it starts to close.
 *
 * <p>Assumes one thermometer per vessel, in or on it. Valid where the gap while drying is at least
 * a few kelvin.
 *
 * <p>Source: common practice, no published source; the change point is {@link BreakFit}.
 */
final class ThermometerEnds {
  /** A gap smaller than this is an offset or a lag, not cooling by sublimation. */
  private static final double SMALLEST_GAP_K = 2;

  private static final double CLOSED_SHARE = 0.35;
  private static final double BEFORE_S = 2 * 3600;
  private static final double AFTER_S = 3600;

  /**
   * One vessel's end of ice.
   *
   * @param trace the thermometer
   * @param point grid point of the end; empty if the gap never closes in the log
   * @param endpoint the same as an answer
   * @param stillBelow whether the vessel still stands well below its surroundings at the end
   * @param rest_K gap that remains when all is dry: the thermometer's offset, K; NaN if not reached
   */
  record End(
      Trace trace, Optional<Integer> point, Endpoint endpoint, double rest_K, boolean stillBelow) {}

  private final Run run;
  private final Grid grid;

  ThermometerEnds(Run run) {
    this.run = run;
    this.grid = run.grid();
  }

  /** The ends of all probed vessels between two points. */
  List<End> find(int from, int to) {
    List<End> ends = new ArrayList<>();
    Optional<Trace> surroundings = run.surroundings();
    if (surroundings.isEmpty()) {
      return ends;
    }
    for (Trace trace : run.vesselThermometers()) {
      ends.add(end(trace, surroundings.get(), from, to));
    }
    return ends;
  }

  private End end(Trace trace, Trace surroundings, int from, int to) {
    Signal gap = surroundings.signal().median(5).with(trace.signal().median(5), (s, t) -> s - t);
    int last = lastGood(gap, from, to);
    double wide = gap.quantileIn(from, to, 0.9);
    if (last - from < 5 || Double.isNaN(wide) || wide < SMALLEST_GAP_K) {
      return notReached(trace, "it never stands clearly below " + surroundings.name(), false);
    }
    double rest = gap.medianIn(last - grid.steps(AFTER_S), last + 1);
    int half = closing(gap, from, last + 1, wide, rest);
    if (half < 0) {
      return notReached(
          trace, "it still stands below " + surroundings.name() + " at the end", true);
    }
    int windowFrom = Math.max(from, half - grid.steps(BEFORE_S));
    int windowTo = Math.min(last + 1, half + grid.steps(AFTER_S));
    BreakFit.Break found = BreakFit.find(gap, windowFrom, windowTo);
    return reached(trace, surroundings, found, grid.second(half), rest);
  }

  private static int lastGood(Signal gap, int from, int to) {
    for (int i = to - 1; i >= from; i--) {
      if (!Double.isNaN(gap.at(i))) {
        return i;
      }
    }
    return from;
  }

  /** Last point at which half of the gap before it remains; the gap before it is asked again. */
  private int closing(Signal gap, int from, int to, double wide, double rest) {
    double before = wide;
    int half = -1;
    for (int round = 0; round < 4; round++) {
      int crossing = gap.lastAbove(rest + 0.5 * (before - rest), from, to);
      if (crossing < 0 || crossing >= to - 3) {
        return -1;
      }
      half = crossing;
      double nearer = gap.quantileIn(half - grid.steps(BEFORE_S), half, 0.7);
      if (nearer - rest < SMALLEST_GAP_K) {
        break;
      }
      before = nearer;
    }
    boolean closed = rest < Math.max(SMALLEST_GAP_K, CLOSED_SHARE * before);
    return closed && before - rest >= SMALLEST_GAP_K ? half : -1;
  }

  private End reached(
      Trace trace, Trace surroundings, BreakFit.Break found, double half_s, double rest) {
    double slack = Math.max(2 * grid.step_s(), 120);
    Instant at = grid.instantAt(found.second());
    Instant low = grid.instantAt(Math.min(found.second(), found.early_s()) - slack);
    Instant high =
        grid.instantAt(Math.max(Math.max(found.second(), found.late_s()), half_s) + slack);
    boolean onGlass = trace.channel().role() == Role.PRODUCT_SURFACE;
    Endpoint.Method method =
        onGlass ? Endpoint.Method.SURFACE_THERMOMETER : Endpoint.Method.PRODUCT_THERMOMETER;
    Endpoint endpoint =
        new Endpoint(
            Optional.of(trace.name()),
            trace.name(),
            method,
            Optional.of(at),
            Optional.of(low),
            Optional.of(high),
            onGlass ? Confidence.MEDIUM : Confidence.HIGH,
            trace.name() + " leaves the ice and goes to " + surroundings.name());
    return new End(trace, Optional.of(grid.pointAt(found.second())), endpoint, rest, false);
  }

  private static End notReached(Trace trace, String why, boolean stillBelow) {
    boolean onGlass = trace.channel().role() == Role.PRODUCT_SURFACE;
    Endpoint endpoint =
        new Endpoint(
            Optional.of(trace.name()),
            trace.name(),
            onGlass ? Endpoint.Method.SURFACE_THERMOMETER : Endpoint.Method.PRODUCT_THERMOMETER,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Confidence.MEDIUM,
            "not reached: " + why);
    return new End(trace, Optional.empty(), endpoint, Double.NaN, stillBelow);
  }
}
