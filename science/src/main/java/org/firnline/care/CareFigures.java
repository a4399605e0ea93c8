package org.firnline.care;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.Series;

/**
 * Reads from one log every figure of the dryer's health that it holds. What a log does not show is
 * left out, never guessed.
 *
 * <p>The pump's start is the last moment at nine tenths of the starting pressure before the chamber
 * first falls below 100 Pa; vacuum lasts from there until the chamber is above 2000 Pa again for
 * good. Gauges are compared over the last tenth of the vacuum, when the load is dry, and over the
 * middle of its first half, when it is not; a log that ends under vacuum is not compared. Common
 * practice, no published source.
 */
public final class CareFigures {

  private static final double VACUUM_PA = 100;
  private static final double VENTED_PA = 2000;
  private static final double FAST_FROM_PA = 5000;
  private static final double FAST_TO_PA = 500;
  private static final double NEAR_COLDEST_K = 5;
  private static final double WARM_COLLECTOR_K = 20;
  private static final double SETTLED_S = 1800;
  private static final double STEADY_K = 0.02;
  private static final int LEAST_ROWS = 20;

  private final Log log;

  private CareFigures(Log log) {
    this.log = log;
  }

  /** The figures of a run; empty for a log that does not say when it began. */
  public static List<CarePoint> of(Log log) {
    if (!log.basis().startKnown() || log.time().size() < LEAST_ROWS) {
      return List.of();
    }
    return new CareFigures(log).read();
  }

  private List<CarePoint> read() {
    List<CarePoint> points = new ArrayList<>();
    collector(points);
    tracking(points);
    Optional<Channel> gauge =
        log.findChannelIn(Role.PRESSURE_CAPACITANCE)
            .or(() -> log.findChannelIn(Role.PRESSURE))
            .or(() -> log.findChannelIn(Role.PRESSURE_THERMAL));
    if (gauge.isEmpty()) {
      return points;
    }
    Series pressure = gauge.get().series();
    int reached = first(pressure, 0, VACUUM_PA);
    if (reached < 0) {
      return points;
    }
    int vented = lastBelow(pressure, VENTED_PA);
    pumpDown(points, reached);
    add(
        points,
        CareFigure.ULTIMATE_PRESSURE,
        OptionalDouble.of(quantile(pressure, reached, vented, 0.02)));
    if (vented < log.time().size() - 1) {
      gauges(points, reached, vented);
    }
    return points;
  }

  private void add(List<CarePoint> points, CareFigure figure, OptionalDouble value) {
    if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
      points.add(new CarePoint(figure, log.time().instant(0), log.name(), value.getAsDouble()));
    }
  }

  private void collector(List<CarePoint> points) {
    Optional<Channel> channel = log.findChannelIn(Role.COLLECTOR);
    if (channel.isEmpty()) {
      return;
    }
    Series collector = channel.get().series();
    double coldest = quantile(collector, 0, log.time().size(), 0.02);
    add(points, CareFigure.COLLECTOR_COLDEST, OptionalDouble.of(coldest));
    double start = quantile(collector, 0, Math.min(5, log.time().size()), 0.5);
    int cold = first(collector, 0, coldest + NEAR_COLDEST_K);
    if (start - coldest > WARM_COLLECTOR_K && cold > 0) {
      int begins = cold;
      while (begins > 0 && !(collector.value(begins) > start - 2)) {
        begins--;
      }
      add(
          points,
          CareFigure.COLLECTOR_COOLING,
          OptionalDouble.of(log.time().elapsed_s(cold) - log.time().elapsed_s(begins)));
    }
  }

  /** The chamber's own fall, read from whichever gauge reaches up to the atmosphere. */
  private void pumpDown(List<CarePoint> points, int reached) {
    for (Channel channel : log.channels()) {
      if (!channel.role().isChamberPressure()) {
        continue;
      }
      Series pressure = channel.series();
      double start = quantile(pressure, 0, Math.max(2, reached / 2), 0.9);
      int below = first(pressure, 0, VACUUM_PA);
      if (!(start > FAST_FROM_PA) || below < 0) {
        continue;
      }
      int begins = below;
      while (begins > 0 && !(pressure.value(begins) > 0.9 * start)) {
        begins--;
      }
      double from = crossing(pressure, begins, below, 0.9 * start);
      double to = crossing(pressure, begins, below, VACUUM_PA);
      add(points, CareFigure.PUMP_DOWN, OptionalDouble.of(to - from));
      double fast = crossing(pressure, begins, below, FAST_FROM_PA);
      double slow = crossing(pressure, begins, below, FAST_TO_PA);
      if (slow > fast) {
        add(
            points,
            CareFigure.PUMPING_RATE,
            OptionalDouble.of(Math.log(FAST_FROM_PA / FAST_TO_PA) / (slow - fast)));
      }
      return;
    }
  }

  /** When a falling pressure crosses a level, s, between two rows by a straight line in ln p. */
  private double crossing(Series pressure, int from, int to, double level) {
    int before = from;
    for (int row = from; row <= to; row++) {
      double value = pressure.value(row);
      if (value <= level) {
        double high = pressure.value(before);
        double share =
            row == before || !(high > value) ? 0 : Math.log(high / level) / Math.log(high / value);
        double start = log.time().elapsed_s(before);
        return start + share * (log.time().elapsed_s(row) - start);
      }
      before = Double.isNaN(value) ? before : row;
    }
    return Double.NaN;
  }

  private void gauges(List<CarePoint> points, int reached, int vented) {
    Optional<Channel> truth = log.findChannelIn(Role.PRESSURE_CAPACITANCE);
    Optional<Channel> thermal = log.findChannelIn(Role.PRESSURE_THERMAL);
    if (truth.isEmpty() || thermal.isEmpty() || vented - reached < LEAST_ROWS) {
      return;
    }
    int length = vented - reached;
    double wet = ratio(truth.get(), thermal.get(), reached + length / 6, reached + length / 3);
    double dry = ratio(truth.get(), thermal.get(), vented - length / 10, vented);
    add(points, CareFigure.VAPOR_RATIO, OptionalDouble.of(wet));
    add(points, CareFigure.GAUGE_AGREEMENT, OptionalDouble.of(dry));
  }

  private static double ratio(Channel truth, Channel thermal, int from, int to) {
    double[] ratios = new double[Math.max(0, to - from)];
    int count = 0;
    for (int row = from; row < to; row++) {
      double ratio = thermal.series().value(row) / truth.series().value(row);
      if (ratio > 0 && ratio < 10) {
        ratios[count++] = ratio;
      }
    }
    return count == 0 ? Double.NaN : middle(ratios, count, 0.5);
  }

  private void tracking(List<CarePoint> points) {
    Optional<Channel> shelf = log.findChannelIn(Role.SHELF);
    Optional<Channel> set = log.findChannelIn(Role.SHELF_SET_POINT);
    if (shelf.isEmpty() || set.isEmpty()) {
      return;
    }
    double sum = 0;
    int count = 0;
    double steadySince = 0;
    double last = Double.NaN;
    for (int row = 0; row < log.time().size(); row++) {
      double wanted = set.get().series().value(row);
      double off = shelf.get().series().value(row) - wanted;
      double now = log.time().elapsed_s(row);
      if (!(Math.abs(wanted - last) < STEADY_K)) {
        steadySince = now;
      }
      last = Double.isNaN(wanted) ? last : wanted;
      if (now - steadySince > SETTLED_S && !Double.isNaN(off)) {
        sum += off * off;
        count++;
      }
    }
    if (count > LEAST_ROWS) {
      add(points, CareFigure.SHELF_TRACKING, OptionalDouble.of(Math.sqrt(sum / count)));
    }
  }

  private int first(Series series, int from, double level) {
    for (int row = from; row < log.time().size(); row++) {
      if (series.value(row) < level) {
        return row;
      }
    }
    return -1;
  }

  private int lastBelow(Series series, double level) {
    int row = log.time().size() - 1;
    while (row > 0 && !(series.value(row) < level)) {
      row--;
    }
    return row;
  }

  private static double quantile(Series series, int from, int to, double share) {
    double[] values = new double[Math.max(0, to - from)];
    int count = 0;
    for (int row = from; row < to; row++) {
      if (!Double.isNaN(series.value(row))) {
        values[count++] = series.value(row);
      }
    }
    return count == 0 ? Double.NaN : middle(values, count, share);
  }

  private static double middle(double[] values, int count, double share) {
    Arrays.sort(values, 0, count);
    return values[(int) Math.round(share * (count - 1))];
  }
}
