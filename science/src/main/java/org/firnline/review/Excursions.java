package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * Stretches in which a product thermometer stands above the critical temperature while its vessel
 * holds ice: from the pump-down to the vessel's own end of ice, or to the heat of secondary drying
 * if that end is unknown.
 */
final class Excursions {
  private static final double JOIN_S = 600;
  private static final double CLEARLY_K = 0.2;

  private Excursions() {}

  /**
   * Finds excursions.
   *
   * @param run the run
   * @param ends ends of ice per vessel
   * @param limit_K critical temperature, K
   * @param from first point that counts
   * @param otherwiseTo last point that counts where a vessel's end is unknown
   */
  static List<Excursion> find(
      Run run, List<ThermometerEnds.End> ends, double limit_K, int from, int otherwiseTo) {
    List<Excursion> all = new ArrayList<>();
    for (Trace trace : run.vesselThermometers()) {
      int to =
          ends.stream()
              .filter(end -> end.trace().equals(trace))
              .flatMap(end -> end.point().stream())
              .findFirst()
              .orElse(otherwiseTo);
      all.addAll(of(run.grid(), trace, limit_K, from, to));
    }
    return all;
  }

  private static List<Excursion> of(Grid grid, Trace trace, double limit_K, int from, int to) {
    Signal product = trace.signal().median(5);
    double clear = Math.max(CLEARLY_K, 3 * product.noise());
    int join = grid.steps(JOIN_S);
    List<Excursion> found = new ArrayList<>();
    int start = product.firstBelow(limit_K, from, to);
    while (start >= 0 && (start = product.firstAbove(limit_K, start, to)) >= 0) {
      int last = start;
      int peak = start;
      for (int i = start; i < to && i - last <= join; i++) {
        last = product.at(i) > limit_K ? i : last;
        peak = product.at(i) > product.at(peak) ? i : peak;
      }
      // What rises above the limit right at the end of ice is the end of ice itself.
      boolean isEnd = to - last <= join && product.at(peak) == product.at(last);
      if (product.at(peak) > limit_K + clear && !isEnd) {
        found.add(
            new Excursion(
                trace.name(),
                limit_K,
                grid.instant(start),
                grid.instant(last),
                product.at(peak),
                grid.instant(peak)));
      }
      start = last + 1;
    }
    return found;
  }
}
