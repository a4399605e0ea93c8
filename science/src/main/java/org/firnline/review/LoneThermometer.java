package org.firnline.review;

import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * The end of ice from a product thermometer with nothing beside it to compare with: after the
 * coldest hour a steady product warms fast and comes to rest again within the hour. The ramp of a
 * shelf lasts longer; the last such rise is taken.
 *
 * <p>Assumes a shelf that holds; a heating that stops by itself looks the same, hence the low
 * confidence. Source: our own choice of method.
 */
final class LoneThermometer {
  private static final double RISES_K = 2.5;
  private static final double WITHIN_S = 3000;
  private static final double STEADY_K_PER_H = 1;
  private static final double STEADY_S = 5400;
  private static final double REST_S = 1500;

  private LoneThermometer() {}

  static List<ThermometerEnds.End> find(Run run) {
    return run.vesselThermometers().stream().map(trace -> end(run.grid(), trace)).toList();
  }

  private static ThermometerEnds.End end(Grid grid, Trace trace) {
    Signal warm = trace.signal().median(5).mean(Math.max(300, 3 * grid.step_s()));
    int size = warm.size();
    int coldest = coldest(warm);
    int found = -1;
    for (int i = size - grid.steps(WITHIN_S) - grid.steps(REST_S);
        i > coldest + grid.steps(STEADY_S);
        i--) {
      if (rises(grid, warm, i)) {
        found = i;
        break;
      }
    }
    if (found < 0) {
      return ThermometerEnds.End.notReached(
          trace,
          Endpoint.ofVesselNotReached(
              trace.name(), Endpoint.Method.PRODUCT_THERMOMETER, ReviewWords.say("lone.none")));
    }
    int to = Math.min(size, found + grid.steps(WITHIN_S + REST_S));
    Signal below = trace.signal().median(5).map(value -> -value);
    BreakFit.Break at = BreakFit.find(below, found - grid.steps(STEADY_S), to);
    double slack = Math.max(3 * grid.step_s(), 300);
    Endpoint endpoint =
        new Endpoint(
            Optional.of(trace.name()),
            trace.name(),
            Endpoint.Method.PRODUCT_THERMOMETER,
            Optional.of(grid.instantAt(at.second())),
            Optional.of(grid.instantAt(Math.min(at.second(), at.early_s()) - slack)),
            Optional.of(grid.instantAt(Math.max(at.second(), at.late_s()) + slack)),
            Confidence.LOW,
            ReviewWords.say("lone.found"));
    return new ThermometerEnds.End(
        trace, Optional.of(grid.pointAt(at.second())), endpoint, Double.NaN, false);
  }

  private static int coldest(Signal warm) {
    int coldest = 0;
    for (int i = 1; i < warm.size(); i++) {
      boolean colder = Double.isNaN(warm.at(coldest)) || warm.at(i) < warm.at(coldest);
      coldest = colder ? i : coldest;
    }
    return coldest;
  }

  /** Steady before, warmer by a few kelvin soon after, and at rest again behind that. */
  private static boolean rises(Grid grid, Signal warm, int i) {
    int within = i + grid.steps(WITHIN_S);
    double before = warm.at(i) - warm.at(i - grid.steps(STEADY_S));
    double rise = warm.at(within) - warm.at(i);
    double after = warm.at(within + grid.steps(REST_S) - 1) - warm.at(within);
    return Math.abs(before) < STEADY_K_PER_H * STEADY_S / 3600
        && rise > RISES_K
        && Math.abs(after) < Math.max(0.12 * rise, 0.3);
  }
}
