package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * The ratio of a heat-loss gauge to a capacitance gauge. In water vapor the heat-loss gauge reads
 * too high; as the load runs dry the chamber fills with bleed gas and the ratio falls toward one.
 * Onset, midpoint and end are the last moments at which 90, 50 and 10 % of (plateau - 1) remain;
 * the plateau is this pair's own highest level, never a constant.
 *
 * <p>Assumes both gauges on the load's chamber. Not valid while air leaks in: the ratio then falls
 * although ice remains.
 *
 * <p>Source: thresholds are the project's definition; the method's standing in S. M. Patel, T. Doen
 * and M. J. Pikal, AAPS PharmSciTech 11 (2010) 73-84, read in abstract.
 */
final class GaugeRatio {
  private static final double SETTLE_S = 1800;
  private static final double SMALLEST_PLATEAU = 0.08;
  private static final double LEAK_PRESSURE_SHARE = 0.15;
  private static final double SMOOTH_SHARE = 0.02;

  /**
   * The ratio of a run.
   *
   * @param channels names of both gauges
   * @param raw the ratio point by point, gauges that stand at full scale left out
   * @param smooth the ratio smoothed in time
   * @param plateau its highest level in the window, 1 if it never rises
   * @param from first point of the window
   * @param to one past the last point of the window
   */
  record Ratio(String channels, Signal raw, Signal smooth, double plateau, int from, int to) {

    /** What remains of (plateau - 1), 1 in vapor and 0 in gas. */
    Signal remaining() {
      return smooth.map(value -> (value - 1) / (plateau - 1));
    }

    boolean hasPlateau() {
      return plateau - 1 >= SMALLEST_PLATEAU;
    }
  }

  private final Run run;
  private final Grid grid;

  GaugeRatio(Run run) {
    this.run = run;
    this.grid = run.grid();
  }

  /** The ratio between two points; empty if the log lacks one kind of gauge. */
  Optional<Ratio> find(int workingFrom, int to) {
    Optional<Trace> thermal = run.first(Role.PRESSURE_THERMAL);
    Optional<Trace> capacitance = run.first(Role.PRESSURE_CAPACITANCE);
    if (thermal.isEmpty() || capacitance.isEmpty()) {
      return Optional.empty();
    }
    Signal truth = belowFullScale(capacitance.get().signal());
    Signal raw =
        thermal.get().signal().with(truth, (high, low) -> low > 0 ? high / low : Double.NaN);
    int from = Math.min(to, workingFrom + grid.steps(SETTLE_S));
    double window = Math.max(5 * grid.step_s(), SMOOTH_SHARE * (to - from) * grid.step_s());
    Signal smooth = raw.median(5).mean(window);
    double plateau = smooth.quantileIn(from, to, 0.995);
    return Optional.of(
        new Ratio(
            thermal.get().name() + " / " + capacitance.get().name(),
            raw,
            smooth,
            Double.isNaN(plateau) ? 1 : plateau,
            from,
            to));
  }

  /** A capacitance gauge at its full scale says nothing. */
  private Signal belowFullScale(Signal gauge) {
    double top = gauge.quantileIn(0, gauge.size(), 1);
    int atTop = 0;
    for (int i = 0; i < gauge.size(); i++) {
      atTop += gauge.at(i) >= top * (1 - 1e-9) ? 1 : 0;
    }
    double limit = atTop >= 3 ? top * (1 - 1e-6) : Double.POSITIVE_INFINITY;
    return gauge.map(value -> value < limit ? value : Double.NaN);
  }

  /** Onset, midpoint and end of a ratio. */
  List<Endpoint> endpoints(Ratio ratio, double working_Pa) {
    List<Endpoint> endpoints = new ArrayList<>();
    endpoints.add(endpoint(ratio, 0.9, Endpoint.Method.GAUGE_RATIO_ONSET, working_Pa));
    endpoints.add(endpoint(ratio, 0.5, Endpoint.Method.GAUGE_RATIO_MIDPOINT, working_Pa));
    endpoints.add(endpoint(ratio, 0.1, Endpoint.Method.GAUGE_RATIO_END, working_Pa));
    return endpoints;
  }

  /** Grid point of the last crossing of a share; empty if it is not crossed. */
  Optional<Integer> crossing(Ratio ratio, double share) {
    if (!ratio.hasPlateau()) {
      return Optional.empty();
    }
    int last = ratio.remaining().lastAbove(share, ratio.from(), ratio.to());
    return last < 0 || last >= ratio.to() - 1 ? Optional.empty() : Optional.of(last);
  }

  private Endpoint endpoint(Ratio ratio, double share, Endpoint.Method method, double working_Pa) {
    Optional<Integer> found = crossing(ratio, share);
    if (found.isEmpty()) {
      String why =
          ratio.hasPlateau()
              ? "not reached: more than " + Math.round(100 * share) + " % of the plateau remains"
              : "not reached: the gauges never part, so there is no plateau to fall from";
      return new Endpoint(
          Optional.empty(),
          ratio.channels(),
          method,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Confidence.MEDIUM,
          why);
    }
    double noise =
        2 * ratio.raw().noise() / (ratio.plateau() - 1) / Math.sqrt(smoothedPoints(ratio));
    int point = found.get();
    int early = ratio.remaining().lastAbove(share + noise, ratio.from(), ratio.to());
    int late = ratio.remaining().lastAbove(share - noise, ratio.from(), ratio.to());
    double half = smoothedPoints(ratio) * grid.step_s() / 4;
    return new Endpoint(
        Optional.empty(),
        ratio.channels(),
        method,
        Optional.of(grid.instant(point)),
        Optional.of(grid.instantAt(grid.second(early < 0 ? point : early) - half)),
        Optional.of(grid.instantAt(grid.second(Math.max(late, point)) + half)),
        leaksAt(ratio, point, working_Pa) ? Confidence.LOW : Confidence.HIGH,
        String.format(
            java.util.Locale.ROOT,
            "%.0f %% of (plateau %.2f - 1) remain for the last time",
            100 * share,
            ratio.plateau()));
  }

  private double smoothedPoints(Ratio ratio) {
    return Math.max(5, SMOOTH_SHARE * (ratio.to() - ratio.from()));
  }

  /** Whether true pressure stands above its level when the ratio falls: then air may leak in. */
  private boolean leaksAt(Ratio ratio, int point, double working_Pa) {
    Signal truth = run.first(Role.PRESSURE_CAPACITANCE).orElseThrow().signal();
    int hour = grid.steps(3600);
    double here = truth.medianIn(point - hour, Math.min(ratio.to(), point + hour));
    return here > (1 + LEAK_PRESSURE_SHARE) * working_Pa;
  }
}
