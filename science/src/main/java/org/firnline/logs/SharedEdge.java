package org.firnline.logs;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Dimension;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.TimeAxis;

/**
 * Estimates by how much one logger's clock is ahead of another's from what both saw: the pump
 * starting, a door opened, a shelf ramping. The changes of two like channels are laid over each
 * other at every lag; the lag at which they agree best counts if no other comes near.
 *
 * <p>Cross-correlation of first differences, normalized by both signals' energy; standard signal
 * analysis, from memory.
 */
final class SharedEdge {
  private static final int MOST_POINTS = 12_000;
  private static final double FARTHEST_S = 14 * 3600;
  private static final double CLEAR = 0.7;
  private static final double LEAST = 0.35;
  private static final double RIVAL = 0.8;
  private static final int MOST_PAIRS = 6;

  private final Log base;
  private final Log other;
  private final double grid_s;
  private final double roughAhead_s;

  private record Peak(double lag_s, double height, boolean alone) {}

  private record Pair(Channel base, Channel other, int rank) {}

  SharedEdge(Log base, Log other) {
    this.base = base;
    this.other = other;
    double duration = Math.max(base.time().duration_s(), other.time().duration_s());
    double step = Math.max(step_s(base.time()), step_s(other.time()));
    this.grid_s = Math.max(Math.max(1, step), duration / MOST_POINTS);
    boolean bothKnown = base.basis().startKnown() && other.basis().startKnown();
    double apart = (other.time().epochMillis(0) - base.time().epochMillis(0)) / 1000.0;
    boolean near = bothKnown && Math.abs(apart) < duration + FARTHEST_S;
    this.roughAhead_s = near ? 0 : apart;
  }

  private static double step_s(TimeAxis time) {
    return time.size() < 2 ? 60 : time.duration_s() / (time.size() - 1);
  }

  /** How the other log's clock stands to the base's. */
  ClockOffset estimate() {
    Optional<Peak> best = Optional.empty();
    String seen = "";
    for (Pair pair : pairs()) {
      Peak peak = peak(pair);
      if (peak.alone() && best.map(b -> peak.height() > b.height() + 0.05).orElse(true)) {
        best = Optional.of(peak);
        seen = "\"" + pair.other().name() + "\" and \"" + pair.base().name() + "\"";
      }
    }
    if (best.isEmpty() || best.get().height() < LEAST) {
      Duration start = Duration.ofMillis(Math.round(roughAhead_s * 1000));
      String why = "no edge that both logs show was found; their clocks are taken to agree";
      String apart = "no edge that both logs show was found; both are taken to start together";
      return new ClockOffset(
          other.name(), base.name(), start, start.isZero() ? why : apart, Confidence.LOW);
    }
    double ahead = roughAhead_s + best.get().lag_s();
    boolean agree = Math.abs(best.get().lag_s()) <= grid_s && roughAhead_s == 0;
    long millis = agree ? 0 : Math.round(ahead * 1000);
    String reason =
        "the changes of " + seen + " fall together so, within " + Math.round(grid_s) + " s";
    Confidence confidence = best.get().height() >= CLEAR ? Confidence.HIGH : Confidence.MEDIUM;
    return new ClockOffset(
        other.name(), base.name(), Duration.ofMillis(millis), reason, confidence);
  }

  /** Like channels of both logs, the most telling first. */
  private List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    for (Channel a : base.channels()) {
      for (Channel b : other.channels()) {
        Dimension kind = a.role().dimension();
        boolean measured = kind == Dimension.PRESSURE || kind == Dimension.TEMPERATURE;
        if (measured && kind == b.role().dimension()) {
          pairs.add(new Pair(a, b, rank(a.role(), b.role())));
        }
      }
    }
    pairs.sort(Comparator.comparingInt(Pair::rank));
    return pairs.subList(0, Math.min(MOST_PAIRS, pairs.size()));
  }

  private static int rank(Role a, Role b) {
    if (a.isChamberPressure() && b.isChamberPressure()) {
      return 0;
    }
    return a == b ? 1 : 2;
  }

  private Peak peak(Pair pair) {
    double[] a = changes(base, pair.base(), base.time().epochMillis(0) / 1000.0);
    double zero = base.time().epochMillis(0) / 1000.0 + roughAhead_s;
    double start = other.time().epochMillis(0) / 1000.0;
    double[] b = changes(other, pair.other(), start);
    int shift = (int) Math.round((start - zero) / grid_s);
    int farthest = (int) Math.ceil(FARTHEST_S / grid_s);
    int longest = a.length + b.length;
    int reach = roughAhead_s == 0 ? Math.min(farthest, longest) : Math.max(a.length, b.length);
    double energy = Math.sqrt(energy(a) * energy(b));
    double[] heights = new double[2 * reach + 1];
    for (int lag = -reach; lag <= reach; lag++) {
      // b[j] was taken at a's place j + shift - lag, if the other clock is ahead by lag.
      heights[lag + reach] = energy == 0 ? 0 : product(a, b, shift - lag) / energy;
    }
    return highest(heights, reach);
  }

  private Peak highest(double[] heights, int reach) {
    int best = 0;
    for (int i = 1; i < heights.length; i++) {
      best = heights[i] > heights[best] ? i : best;
    }
    double rival = 0;
    int apart = 5;
    for (int i = 0; i < heights.length; i++) {
      rival = Math.abs(i - best) > apart ? Math.max(rival, heights[i]) : rival;
    }
    return new Peak((best - reach) * grid_s, heights[best], rival < RIVAL * heights[best]);
  }

  private static double product(double[] a, double[] b, int place) {
    double sum = 0;
    for (int j = Math.max(0, -place); j < Math.min(b.length, a.length - place); j++) {
      sum += a[j + place] * b[j];
    }
    return sum;
  }

  private static double energy(double[] values) {
    return Arrays.stream(values).map(v -> v * v).sum();
  }

  /** Changes from one grid point to the next; pressures by their logarithm. */
  private double[] changes(Log log, Channel channel, double start_s) {
    boolean pressure = channel.role().dimension() == Dimension.PRESSURE;
    int points = (int) (log.time().duration_s() / grid_s) + 2;
    double[] changes = new double[points];
    double before = Double.NaN;
    int row = 0;
    double held = Double.NaN;
    for (int i = 0; i < points; i++) {
      double until = (start_s + i * grid_s) * 1000;
      while (row < log.time().size() && log.time().epochMillis(row) <= until) {
        double value = channel.series().value(row++);
        held = Double.isNaN(value) ? held : pressure ? Math.log10(Math.max(value, 0.1)) : value;
      }
      double change = held - before;
      changes[i] = Double.isNaN(change) ? 0 : change;
      before = held;
    }
    return changes;
  }
}
