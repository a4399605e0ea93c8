package org.firnline.app.planfile;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.firnline.evidence.Band;
import org.firnline.lab.Dryer;
import org.firnline.lab.Range;
import org.firnline.planning.PlanQuestion;
import org.firnline.planning.Planner;
import org.firnline.planning.WindowMap;

/**
 * Frames the window map on the shelf temperatures worth looking at: around the limits, with the
 * hold inside. A dryer that goes to +60 °C would otherwise leave the window in a corner.
 */
final class MapFrame {
  private static final int FEW_COLUMNS = 2;
  private static final double ABOVE_LIMIT_K = 12;
  private static final double BELOW_LIMIT_K = 16;
  private static final double AROUND_HOLD_K = 4;
  private static final double LEAST_HEIGHT_K = 20;

  private MapFrame() {}

  /** The map of a question, framed; {@code shelf_K} is the hold it must show. */
  static WindowMap draw(PlanQuestion question, double shelf_K, int columns, int rows) {
    Planner planner = new Planner();
    WindowMap coarse = planner.map(question, FEW_COLUMNS, 2);
    Range frame = frame(question.dryer().shelfTemperature(), coarse, shelf_K);
    return planner.map(framed(question, frame), columns, rows);
  }

  private static Range frame(Range shelf, WindowMap coarse, double shelf_K) {
    double[] limits =
        coarse.productLimit_K().stream()
            .flatMap(Optional::stream)
            .flatMapToDouble(band -> DoubleStream.of(band.low(), band.high()))
            .toArray();
    if (limits.length == 0) {
      return shelf;
    }
    double lowest = DoubleStream.of(limits).min().orElse(shelf.low());
    double highest =
        coarse.productLimit_K().stream()
            .flatMap(Optional::stream)
            .mapToDouble(Band::best)
            .max()
            .orElse(shelf.high());
    double low = Math.min(lowest - BELOW_LIMIT_K, shelf_K - AROUND_HOLD_K);
    double high = Math.max(highest + ABOVE_LIMIT_K, shelf_K + AROUND_HOLD_K);
    double from = Math.max(shelf.low(), low);
    double to = Math.min(shelf.high(), Math.max(high, from + LEAST_HEIGHT_K));
    return from < to ? new Range(from, to) : shelf;
  }

  private static PlanQuestion framed(PlanQuestion question, Range shelf) {
    Dryer dryer = question.dryer();
    return new PlanQuestion(
        question.load(),
        new Dryer(
            dryer.name(),
            shelf,
            dryer.pressure(),
            dryer.shelfRamp(),
            dryer.capability(),
            dryer.collector()),
        question.wanted(),
        question.start());
  }
}
