package org.firnline.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.evidence.Band;
import org.firnline.lab.Range;
import org.firnline.numerics.Normal;
import org.firnline.numerics.Threshold;

/** Draws the window map of a plan: drying time over the settings the dryer accepts. */
final class WindowMapper {

  private static final double LINE_ACCURACY_K = 0.05;
  private static final double NINE_IN_TEN = Normal.quantile(0.95);

  private final PlanQuestion question;
  private final LoadForecast forecast;
  private final VaporPath path;

  WindowMapper(PlanQuestion question, LoadForecast forecast) {
    this.question = question;
    this.forecast = forecast;
    this.path = VaporPath.of(question.dryer().capability(), question.dryer().collector());
  }

  /** The map with {@code columns} pressures and {@code rows} shelf temperatures. */
  WindowMap draw(int columns, int rows) {
    Range shelf = question.dryer().shelfTemperature();
    Range pressure = question.dryer().pressure();
    List<Double> pressures = spread(pressure, columns);
    List<Double> shelves = spread(shelf, rows);
    List<List<Double>> times =
        IntStream.range(0, rows)
            .parallel()
            .mapToObj(row -> row(shelves.get(row), pressures))
            .toList();
    return new WindowMap(
        pressures,
        shelves,
        times,
        pressures.parallelStream().map(this::productLimit).toList(),
        pressures.parallelStream().map(this::capabilityLimit).toList(),
        path.floor());
  }

  private List<Double> row(double shelf_K, List<Double> pressures) {
    List<Double> row = new ArrayList<>(pressures.size());
    for (double pressure_Pa : pressures) {
      row.add(forecast.time(forecast.typical(), new Hold(shelf_K, pressure_Pa)));
    }
    return row;
  }

  private Optional<Band> productLimit(double pressure_Pa) {
    Optional<Double> cautious = shelfWhereWarm(pressure_Pa, NINE_IN_TEN);
    Optional<Double> best = shelfWhereWarm(pressure_Pa, 0);
    Optional<Double> bold = shelfWhereWarm(pressure_Pa, -NINE_IN_TEN);
    if (best.isEmpty()) {
      return Optional.empty();
    }
    double middle = best.get();
    double low = Math.min(middle, cautious.orElse(question.dryer().shelfTemperature().low()));
    double high = Math.max(middle, bold.orElse(question.dryer().shelfTemperature().high()));
    return Optional.of(new Band(low, middle, high));
  }

  /** Shelf at which the warmest vial reaches its limit with the given deviations of doubt added. */
  private Optional<Double> shelfWhereWarm(double pressure_Pa, double deviations) {
    return crossing(
        shelf_K -> forecast.warmest(new Hold(shelf_K, pressure_Pa)).excess(deviations) > 0);
  }

  private Optional<Double> capabilityLimit(double pressure_Pa) {
    return crossing(
        shelf_K ->
            forecast.peakRate(new Hold(shelf_K, pressure_Pa)).best() > path.rate(pressure_Pa));
  }

  private Optional<Double> crossing(java.util.function.DoublePredicate exceeds) {
    Range shelf = question.dryer().shelfTemperature();
    if (exceeds.test(shelf.low()) || !exceeds.test(shelf.high())) {
      return Optional.empty();
    }
    return Optional.of(Threshold.within(exceeds, shelf.low(), shelf.high(), LINE_ACCURACY_K));
  }

  private static List<Double> spread(Range range, int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> range.low() + (range.high() - range.low()) * i / (count - 1))
        .toList();
  }
}
