package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * The end of ice of a load from any channel that follows its vapor: a measured vapor rate, the dew
 * point of the chamber, or the collector, which recovers its cold when the vapor ends. The end is
 * the last moment at which a small share of the fall is still to come: 2 % of a rate, 5 % of a
 * temperature.
 *
 * <p>Assumes that the channel has settled when primary drying ends. Source: common practice, no
 * published source.
 */
final class VaporFall {
  private static final double LEFT = 0.05;

  /** Few late vessels give a small share of the whole rate. */
  private static final double LEFT_OF_RATE = 0.02;

  private static final double SETTLE_S = 1800;

  /** A level that still moves by more than this share of the fall has not settled. */
  private static final double FLAT = 0.1;

  private final Run run;
  private final Grid grid;

  VaporFall(Run run) {
    this.run = run;
    this.grid = run.grid();
  }

  /** What each such channel says between two points of a run. */
  List<Endpoint> find(int from, int to) {
    List<Endpoint> ends = new ArrayList<>();
    run.first(Role.VAPOR_RATE)
        .flatMap(trace -> end(trace, Endpoint.Method.VAPOR_RATE, 0, Confidence.HIGH, from, to))
        .ifPresent(ends::add);
    run.first(Role.DEW_POINT)
        .flatMap(trace -> end(trace, Endpoint.Method.DEW_POINT, 5, Confidence.MEDIUM, from, to))
        .ifPresent(ends::add);
    run.first(Role.COLLECTOR)
        .flatMap(trace -> end(trace, Endpoint.Method.COLLECTOR, 1.5, Confidence.LOW, from, to))
        .ifPresent(ends::add);
    return ends;
  }

  /**
   * The last fall of one channel.
   *
   * @param least smallest fall that counts, in the unit of the channel
   */
  private Optional<Endpoint> end(
      Trace trace,
      Endpoint.Method method,
      double least,
      Confidence confidence,
      int workingFrom,
      int to) {
    int from = Math.min(to, workingFrom + grid.steps(SETTLE_S));
    double window_s = Math.max(5 * grid.step_s(), 0.01 * (to - from) * grid.step_s());
    Signal raw = trace.signal();
    Signal level = raw.without(to, raw.size()).median(5).mean(window_s);
    int tail = Math.max(3, (to - from) / 50);
    double rest = level.medianIn(to - tail, to);
    double before = level.medianIn(to - 2 * tail, to - tail);
    double high = level.quantileIn(from, to, 0.8);
    double fall = high - rest;
    double noise = raw.noise() / Math.sqrt(window_s / grid.step_s());
    boolean clear = fall > Math.max(least, 10 * noise) && fall > 0.3 * Math.abs(high - least);
    boolean settled = Math.abs(before - rest) < FLAT * fall;
    if (!clear && !(fall > Math.max(least, 10 * noise) && least > 0)) {
      return Optional.empty();
    }
    if (!settled) {
      return Optional.of(
          Endpoint.ofLoadNotReached(trace.name(), method, ReviewWords.say("fall.not-settled")));
    }
    double left = method == Endpoint.Method.VAPOR_RATE ? LEFT_OF_RATE : LEFT;
    double mark = rest + left * fall + noise;
    int at = level.lastAbove(mark, from, to);
    if (at < 0 || at >= to - 2) {
      return Optional.empty();
    }
    double doubt = 2 * noise + left / 2 * fall;
    int early = Math.max(from, level.lastAbove(mark + doubt, from, to));
    int late = Math.max(at, level.lastAbove(mark - doubt, from, to));
    double slack = window_s / 2 + grid.step_s() + 0.005 * (to - from) * grid.step_s();
    return Optional.of(
        new Endpoint(
            Optional.empty(),
            trace.name(),
            method,
            Optional.of(grid.instant(at)),
            Optional.of(grid.instantAt(grid.second(early) - slack)),
            Optional.of(grid.instantAt(grid.second(late) + slack)),
            confidence,
            ReviewWords.say("fall." + method.name().toLowerCase(java.util.Locale.ROOT))));
  }
}
