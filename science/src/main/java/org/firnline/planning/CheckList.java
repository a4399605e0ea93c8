package org.firnline.planning;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.dryer.VaporLimit;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.evidence.Band;
import org.firnline.lab.Collector;
import org.firnline.lab.Dryer;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Range;
import org.firnline.matter.Water;
import org.firnline.planning.CheckLine.Subject;
import org.firnline.units.QuantityKind;

/** Looks at everything that can spoil a hold and says what it found. */
final class CheckList {

  /**
   * Collector filled this far by the load is worth a look; common practice, no published source.
   */
  private static final double COLLECTOR_WATCH_SHARE = 0.8;

  /**
   * The collector should be colder than the product by 10 to 15 K. Source: two equipment makers'
   * texts (found, addresses withheld).
   */
  private static final double COLLECTOR_COLDER_K = 10;

  private static final double COLLECTOR_MUCH_COLDER_K = 15;

  /**
   * Layers below 10 mm are preferred and 20 mm is the upper limit. Source: a published standard
   * operating procedure and an equipment maker's manual (found).
   */
  private static final double LAYER_WATCH_M = 0.010;

  private static final double LAYER_STOP_M = 0.020;

  /** Working hours unless the lab says otherwise; an assumption. */
  private static final LocalTime OPENING = LocalTime.of(8, 0);

  private static final LocalTime CLOSING = LocalTime.of(18, 0);

  private final PlanQuestion question;
  private final LoadItem item;
  private final Dryer dryer;
  private final Hold hold;
  private final Prediction prediction;
  private final LoadForecast.WarmestPoint warmest;
  private final VaporPath path;

  CheckList(
      PlanQuestion question, Hold hold, Prediction prediction, LoadForecast.WarmestPoint warmest) {
    this.question = question;
    this.item = question.load();
    this.dryer = question.dryer();
    this.hold = hold;
    this.prediction = prediction;
    this.warmest = warmest;
    this.path = VaporPath.of(dryer.capability(), dryer.collector());
  }

  /** Every line, gravest first. */
  List<CheckLine> lines() {
    List<CheckLine> lines = new ArrayList<>();
    lines.add(sublimation());
    lines.add(productTemperature());
    lines.add(capability());
    lines.add(collectorTemperature());
    lines.add(collectorCapacity());
    lines.add(collectorRate());
    lines.add(layerDepth());
    lines.add(
        within(
            Subject.SHELF_RANGE,
            dryer.shelfTemperature(),
            hold.shelf_K(),
            QuantityKind.TEMPERATURE));
    lines.add(
        within(
            Subject.PRESSURE_RANGE, dryer.pressure(), hold.pressure_Pa(), QuantityKind.PRESSURE));
    question.start().flatMap(this::attendance).ifPresent(lines::add);
    lines.sort(Comparator.comparing(CheckLine::verdict).reversed());
    return lines;
  }

  private CheckLine sublimation() {
    double coldest =
        new QuasiSteadyFront().coldest(Math.min(hold.pressure_Pa(), Water.TRIPLE_POINT_PRESSURE));
    boolean sublimes = prediction.peakRate_kg_per_s().best() > 0;
    return new CheckLine(
        Subject.SUBLIMATION,
        sublimes ? Verdict.PASS : Verdict.STOP,
        List.of(
            temperature("shelf", hold.shelf_K()),
            temperature("ice_at_chamber_pressure", coldest),
            new Figure("pressure", hold.pressure_Pa(), QuantityKind.PRESSURE)));
  }

  private CheckLine productTemperature() {
    double limitBest = warmest.limit().best();
    Verdict verdict =
        warmest.best() > limitBest
            ? Verdict.STOP
            : warmest.excess(HoldFinder.ACCEPTED_DEVIATIONS) > 1e-9 ? Verdict.WATCH : Verdict.PASS;
    return new CheckLine(
        Subject.PRODUCT_TEMPERATURE,
        verdict,
        List.of(
            temperature("warmest", warmest.best()),
            temperature("limit", limitBest),
            new Figure("margin", limitBest - warmest.best(), QuantityKind.TEMPERATURE_DIFFERENCE),
            new Figure("doubt", warmest.doubt(), QuantityKind.TEMPERATURE_DIFFERENCE),
            new Figure("risk", warmest.risk(), QuantityKind.FRACTION)));
  }

  private CheckLine capability() {
    double most = carriedByWay();
    double best = prediction.peakRate_kg_per_s().best();
    double high = prediction.peakRate_kg_per_s().high();
    Verdict verdict = best > most ? Verdict.STOP : high > most ? Verdict.WATCH : Verdict.PASS;
    return new CheckLine(
        Subject.CAPABILITY,
        verdict,
        List.of(flow("rate", best), flow("most", most), share(best / most)));
  }

  /** What duct or measured line carry; the collector's rate has a line of its own. */
  private double carriedByWay() {
    return path.limits().stream()
        .filter(limit -> limit.part() != VaporLimit.Part.COLLECTOR)
        .mapToDouble(limit -> limit.rate(hold.pressure_Pa()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private CheckLine collectorTemperature() {
    double colder =
        item.product().critical().temperature().best() - dryer.collector().temperature();
    Verdict verdict =
        path.floor() >= hold.pressure_Pa() || colder < COLLECTOR_COLDER_K
            ? Verdict.STOP
            : colder < COLLECTOR_MUCH_COLDER_K || path.floor() > hold.pressure_Pa() / 2
                ? Verdict.WATCH
                : Verdict.PASS;
    return new CheckLine(
        Subject.COLLECTOR_TEMPERATURE,
        verdict,
        List.of(
            temperature("collector", dryer.collector().temperature()),
            new Figure("floor", path.floor(), QuantityKind.PRESSURE),
            new Figure("pressure", hold.pressure_Pa(), QuantityKind.PRESSURE),
            new Figure("colder", colder, QuantityKind.TEMPERATURE_DIFFERENCE)));
  }

  private CheckLine collectorCapacity() {
    double ice = item.totalIce();
    double share = ice / dryer.collector().capacity();
    Verdict verdict =
        share > 1 ? Verdict.STOP : share > COLLECTOR_WATCH_SHARE ? Verdict.WATCH : Verdict.PASS;
    return new CheckLine(
        Subject.COLLECTOR_CAPACITY,
        verdict,
        List.of(
            share(share),
            new Figure("ice", ice, QuantityKind.MASS),
            new Figure("capacity", dryer.collector().capacity(), QuantityKind.MASS)));
  }

  private CheckLine collectorRate() {
    Collector collector = dryer.collector();
    double best = prediction.peakRate_kg_per_s().best();
    double high = prediction.peakRate_kg_per_s().high();
    Verdict verdict =
        best > collector.rate()
            ? Verdict.STOP
            : high > collector.rate() ? Verdict.WATCH : Verdict.PASS;
    return new CheckLine(
        Subject.COLLECTOR_RATE,
        verdict,
        List.of(
            flow("rate", best), flow("most", collector.rate()), share(best / collector.rate())));
  }

  private CheckLine layerDepth() {
    double depth = item.frozenDepth();
    Verdict verdict =
        depth > LAYER_STOP_M ? Verdict.STOP : depth > LAYER_WATCH_M ? Verdict.WATCH : Verdict.PASS;
    return new CheckLine(
        Subject.LAYER_DEPTH,
        verdict,
        List.of(
            new Figure("depth", depth, QuantityKind.LENGTH),
            new Figure("preferred", LAYER_WATCH_M, QuantityKind.LENGTH),
            new Figure("most", LAYER_STOP_M, QuantityKind.LENGTH)));
  }

  /** Nobody is there when the last vessel may become dry. */
  private Optional<CheckLine> attendance(LocalDateTime start) {
    Band last = prediction.lastTime_s();
    if (!Double.isFinite(last.high())) {
      return Optional.empty();
    }
    LocalDateTime end = start.plusSeconds(Math.round(last.high()));
    Duration wait = Duration.between(end, nextAttended(end));
    return Optional.of(
        new CheckLine(
            Subject.ATTENDANCE,
            wait.isZero() ? Verdict.PASS : Verdict.WATCH,
            List.of(
                new Figure("end_after_start", last.high(), QuantityKind.TIME),
                new Figure("wait", wait.toSeconds(), QuantityKind.TIME),
                new Figure("start_later_by", wait.toSeconds(), QuantityKind.TIME))));
  }

  private static LocalDateTime nextAttended(LocalDateTime time) {
    LocalDateTime attended = time;
    while (!isAttended(attended)) {
      boolean beforeOpening = attended.toLocalTime().isBefore(OPENING);
      attended = (beforeOpening ? attended : attended.plusDays(1)).with(OPENING);
    }
    return attended;
  }

  private static boolean isAttended(LocalDateTime time) {
    boolean weekend = time.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) > 0;
    LocalTime clock = time.toLocalTime();
    return !weekend && !clock.isBefore(OPENING) && clock.isBefore(CLOSING);
  }

  private static CheckLine within(Subject subject, Range range, double value, QuantityKind kind) {
    return new CheckLine(
        subject,
        range.contains(value) ? Verdict.PASS : Verdict.STOP,
        List.of(
            new Figure("setting", value, kind),
            new Figure("low", range.low(), kind),
            new Figure("high", range.high(), kind)));
  }

  private static Figure temperature(String name, double kelvin) {
    return new Figure(name, kelvin, QuantityKind.TEMPERATURE);
  }

  private static Figure flow(String name, double kilogramsPerSecond) {
    return new Figure(name, kilogramsPerSecond, QuantityKind.MASS_FLOW);
  }

  private static Figure share(double value) {
    return new Figure("share", value, QuantityKind.FRACTION);
  }
}
