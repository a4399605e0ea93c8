package org.firnline.drying.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What the dryer is told over time; the last settings stay for as long as drying takes.
 *
 * @param shelf shelf temperature, K
 * @param pressure chamber pressure, Pa
 */
public record Schedule(Track shelf, Track pressure) {

  /**
   * Shelf steps one after the other, pressure straight from point to point.
   *
   * @param shelfStart_K shelf temperature at time 0
   * @param steps at least one
   * @param pressures at least one
   */
  public static Schedule of(
      double shelfStart_K, List<ShelfStep> steps, List<Track.Point> pressures) {
    List<Track.Point> shelf = new ArrayList<>();
    double time = 0;
    double now = shelfStart_K;
    shelf.add(new Track.Point(time, now));
    for (ShelfStep step : steps) {
      time += Math.abs(step.target() - now) / step.ramp();
      now = step.target();
      shelf.add(new Track.Point(time, now));
      time += step.hold();
      shelf.add(new Track.Point(time, now));
    }
    return new Schedule(Track.through(shelf), Track.through(pressures));
  }

  /** The same settings for ever. */
  public static Schedule constant(double shelf_K, double pressure_Pa) {
    return new Schedule(Track.constant(shelf_K), Track.constant(pressure_Pa));
  }

  /** Times at which any setting bends or steps, s; rising, each once. */
  public double[] bends() {
    return DoubleStream.concat(DoubleStream.of(shelf.bends()), DoubleStream.of(pressure.bends()))
        .sorted()
        .distinct()
        .toArray();
  }
}
