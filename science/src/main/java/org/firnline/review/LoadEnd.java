package org.firnline.review;

import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * The end of ice of the whole load on a dryer whose pressure floats: pressure follows the vapor, so
 * its last fall to the level it keeps is the last vessel running dry.
 *
 * <p>Assumes no pressure control. Source: common practice, no published source.
 */
final class LoadEnd {
  private static final double SMALLEST_FALL = 1.2;
  private static final double BEFORE_S = 3 * 3600;

  private LoadEnd() {}

  /** Grid point of the last fall; empty if the pressure does not fall clearly. */
  static Optional<Integer> find(Run run, int from, int to) {
    Optional<Trace> gauge = run.truestGauge();
    if (gauge.isEmpty()) {
      return Optional.empty();
    }
    Grid grid = run.grid();
    Signal pressure = gauge.get().signal().median(5).mean(600);
    int tail = Math.max(grid.steps(1800), (to - from) / 20);
    double rest = pressure.medianIn(to - tail, to);
    double before = pressure.quantileIn(from, to, 0.6);
    int fall = -1;
    for (int round = 0; round < 4; round++) {
      int crossing = pressure.lastAbove(Math.sqrt(before * rest), from, to);
      if (crossing < 0 || crossing >= to - 3) {
        return Optional.empty();
      }
      fall = crossing;
      double nearer = pressure.medianIn(fall - grid.steps(BEFORE_S), fall - grid.steps(900));
      before = Double.isNaN(nearer) || nearer < SMALLEST_FALL * rest ? before : nearer;
    }
    return before > SMALLEST_FALL * rest ? Optional.of(fall) : Optional.empty();
  }

  static Endpoint endpoint(Run run, int point) {
    Grid grid = run.grid();
    return new Endpoint(
        Optional.empty(),
        run.truestGauge().orElseThrow().name(),
        Endpoint.Method.PRESSURE_FALL,
        Optional.of(grid.instant(point)),
        Optional.of(grid.instantAt(grid.second(point) - 1200)),
        Optional.of(grid.instantAt(grid.second(point) + 1200)),
        Confidence.MEDIUM,
        "the pressure falls for the last time to the level it keeps");
  }
}
