package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * The ratio of a heat-loss gauge to a capacitance gauge. In water vapor the heat-loss gauge reads
 * too high; as the load runs dry the chamber fills with bleed gas and the ratio falls toward one.
 * Onset, midpoint and end are the last moments at which 90, 50 and 10 % of (plateau - 1) remain;
 * the plateau is this pair's own highest level, never a constant. Where the ratio settles above one
 * because dry product still gives off bound water, the moment it settles is given too.
 *
 * <p>Assumes both gauges on the load's chamber. Not valid while air leaks in: the ratio then falls
 * although ice remains.
 *
 * <p>Source: thresholds are the project's definition; the method's standing in S. M. Patel, T. Doen
 * and M. J. Pikal, AAPS PharmSciTech 11 (2010) 73-84, read in abstract.
 */
final class GaugeRatio {
  private static final double SETTLE_S = 1800;
  private static final double VENTING_S = 120;
  private static final double SMALLEST_PLATEAU = 0.08;
  private static final double LEAK_PRESSURE_SHARE = 0.15;

  /** The longest smoothing, a share of the window; the shortest that calms the noise is taken. */
  private static final double LONGEST_SMOOTH_SHARE = 0.02;

  private static final double CALM = 0.01;

  /** Below this share the ratio falls fast; above, a little noise moves a mark by hours. */
  private static final double STEEP = 0.8;

  /** A heat-loss gauge follows the last vapor late, s (assumed). */
  private static final double GAUGE_LATE_S = 45;

  /** Above this share of the plateau vapor of ice still comes. */
  private static final double HIGHEST_REST = 0.35;

  private static final double FLAT = 0.02;

  /** A level that runs along a mark is not told from it. */
  private static final double TOO_NEAR = 0.03;

  /**
   * The ratio of a run.
   *
   * @param channels names of both gauges
   * @param raw the ratio point by point, gauges that stand at full scale left out
   * @param smooth the ratio smoothed in time
   * @param smoothed_s length of the smoothing, s
   * @param plateau its highest level in the window, 1 if it never rises
   * @param from first point of the window
   * @param to one past the last point of the window
   */
  record Ratio(
      String channels,
      Signal raw,
      Signal smooth,
      double smoothed_s,
      double plateau,
      int from,
      int to) {

    /** What remains of (plateau - 1), 1 in vapor and 0 in gas. */
    Signal remaining() {
      return smooth.map(value -> (value - 1) / (plateau - 1));
    }

    boolean hasPlateau() {
      return plateau - 1 >= SMALLEST_PLATEAU;
    }

    /** Noise of {@link #remaining()}. */
    double noise() {
      return raw.noise() / (plateau - 1) / Math.sqrt(Math.max(1, smoothed_s / raw.step_s()));
    }

    Ratio until(int other) {
      return new Ratio(channels, raw, smooth, smoothed_s, plateau, from, other);
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
    // The gauges follow a venting at their own speeds.
    raw = raw.without(to - Math.max(3, grid.steps(VENTING_S)), raw.size());
    double smoothed_s = smoothing_s(raw, from, to);
    Signal smooth = raw.median(5).mean(smoothed_s);
    double plateau = smooth.quantileIn(from, to, 0.995);
    return Optional.of(
        new Ratio(
            thermal.get().name() + " / " + capacitance.get().name(),
            raw,
            smooth,
            smoothed_s,
            Double.isNaN(plateau) ? 1 : plateau,
            from,
            to));
  }

  /** As long as it takes to bring the noise to a hundredth of the plateau, three points or more. */
  private double smoothing_s(Signal raw, int from, int to) {
    double longest = LONGEST_SMOOTH_SHARE * (to - from) * grid.step_s();
    double height = raw.median(5).mean(longest).quantileIn(from, to, 0.995) - 1;
    double calm = height > 0 ? Math.pow(raw.noise() / height / CALM, 2) : 5;
    double points = Math.max(3, Math.min(calm, longest / grid.step_s()));
    return points * grid.step_s();
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

  /** Onset, midpoint and end of a ratio, and where it settles. */
  List<Endpoint> endpoints(Ratio ratio, double working_Pa) {
    List<Endpoint> endpoints = new ArrayList<>();
    endpoints.add(endpoint(ratio, 0.9, Endpoint.Method.GAUGE_RATIO_ONSET, working_Pa));
    endpoints.add(endpoint(ratio, 0.5, Endpoint.Method.GAUGE_RATIO_MIDPOINT, working_Pa));
    endpoints.add(endpoint(ratio, 0.1, Endpoint.Method.GAUGE_RATIO_END, working_Pa));
    settled(ratio, working_Pa).ifPresent(endpoints::add);
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
    if (found.isPresent() && isFlat(ratio) && Math.abs(rest(ratio) - share) < TOO_NEAR) {
      String why = ReviewWords.say("ratio.keeps", Math.round(100 * share));
      return Endpoint.ofLoadNotReached(ratio.channels(), method, why);
    }
    if (found.isEmpty()) {
      String why =
          ratio.hasPlateau()
              ? ReviewWords.say("ratio.remains", Math.round(100 * share))
              : ReviewWords.say("ratio.no-plateau");
      return Endpoint.ofLoadNotReached(ratio.channels(), method, why);
    }
    String note =
        ReviewWords.say(
            "ratio.crossed",
            Math.round(100 * share),
            String.format(Locale.ROOT, "%.2f", ratio.plateau()));
    return reached(ratio, share, method, working_Pa, note);
  }

  /** The last fall to the level the ratio keeps, if it keeps one and that is low. */
  private Optional<Endpoint> settled(Ratio ratio, double working_Pa) {
    if (!ratio.hasPlateau() || ratio.to() - ratio.from() < 20) {
      return Optional.empty();
    }
    double rest = rest(ratio);
    boolean flat = isFlat(ratio);
    double share = rest + 0.08 * (1 - rest);
    if (!(rest < HIGHEST_REST) || !flat || crossing(ratio, share).isEmpty()) {
      return Optional.empty();
    }
    String note = ReviewWords.say("ratio.settled", Math.round(100 * Math.max(0, rest)));
    return Optional.of(
        reached(ratio, share, Endpoint.Method.GAUGE_RATIO_SETTLED, working_Pa, note));
  }

  private static int tail(Ratio ratio) {
    return Math.max(3, (ratio.to() - ratio.from()) / 50);
  }

  /** What remains in the last fiftieth of the window. */
  private static double rest(Ratio ratio) {
    return ratio.remaining().medianIn(ratio.to() - tail(ratio), ratio.to());
  }

  private static boolean isFlat(Ratio ratio) {
    int tail = tail(ratio);
    double before = ratio.remaining().medianIn(ratio.to() - 2 * tail, ratio.to() - tail);
    return Math.abs(before - rest(ratio)) < FLAT + 2 * ratio.noise();
  }

  private Endpoint reached(
      Ratio ratio, double share, Endpoint.Method method, double working_Pa, String note) {
    int point = crossing(ratio, share).orElseThrow();
    boolean steep = share < STEEP;
    double doubt = (steep ? 0.8 : 1.6) * ratio.noise() + (steep ? 0.001 : 0.003);
    int early = ratio.remaining().lastAbove(share + doubt, ratio.from(), ratio.to());
    int late = ratio.remaining().lastAbove(share - doubt, ratio.from(), ratio.to());
    double half = ratio.smoothed_s() / 4 + grid.step_s() / 2;
    double length_s = (ratio.to() - ratio.from()) * grid.step_s();
    double slack = half + 0.0002 * length_s;
    boolean settles = method == Endpoint.Method.GAUGE_RATIO_SETTLED;
    // Smoothing spreads the last step of the ratio to both sides; the foot of it lies late.
    double late_s = settles ? ratio.smoothed_s() / 3 : 0;
    return new Endpoint(
        Optional.empty(),
        ratio.channels(),
        method,
        Optional.of(grid.instantAt(grid.second(point) + grid.step_s() / 2 - late_s)),
        Optional.of(
            grid.instantAt(
                grid.second(early < 0 ? point : early) - slack - (settles ? GAUGE_LATE_S : 0))),
        Optional.of(grid.instantAt(grid.second(Math.max(late, point)) + slack)),
        leaksAt(ratio, point, working_Pa) ? Confidence.LOW : Confidence.HIGH,
        note);
  }

  /** Whether true pressure stands above its level when the ratio falls: then air may leak in. */
  private boolean leaksAt(Ratio ratio, int point, double working_Pa) {
    Signal truth = run.first(Role.PRESSURE_CAPACITANCE).orElseThrow().signal();
    int hour = grid.steps(3600);
    double here = truth.medianIn(point - hour, Math.min(ratio.to(), point + hour));
    return here > (1 + LEAK_PRESSURE_SHARE) * working_Pa;
  }
}
