package org.firnline.drying.cycle;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.firnline.drying.recipe.Track;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;

/**
 * A recipe laid out in time.
 *
 * @param shelf set point of the shelf, K
 * @param pressure set point of the chamber, Pa; meaningless before {@code evacuation}
 * @param evacuation when the pump starts, s
 * @param secondary when the ramp into secondary drying starts, s
 * @param backfill when gas is let in, s
 * @param end s
 */
public record CycleSchedule(
    Track shelf, Track pressure, double evacuation, double secondary, double backfill, double end) {

  /** Pressure asked for where a step under vacuum leaves it to the pump, Pa. */
  private static final double AS_LOW_AS_IT_GOES = 0.01;

  public CycleSchedule {
    if (!(0 <= evacuation
        && evacuation <= secondary
        && secondary <= backfill
        && backfill <= end
        && end < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "phases out of order: evacuation "
              + evacuation
              + ", secondary "
              + secondary
              + ", backfill "
              + backfill
              + ", end "
              + end);
    }
  }

  /** The steps of {@code recipe} one after the other; a phase it lacks takes no time. */
  public static CycleSchedule of(Recipe recipe) {
    List<Track.Point> shelf = new ArrayList<>();
    List<Track.Point> pressure = new ArrayList<>();
    Map<RecipePhase, Double> starts = new EnumMap<>(RecipePhase.class);
    double time = 0;
    double now = recipe.shelfStart();
    shelf.add(new Track.Point(0, now));
    for (RecipeStep step : recipe.steps()) {
      starts.putIfAbsent(step.phase(), time);
      double wanted = step.pressure().orElse(AS_LOW_AS_IT_GOES);
      pressure.add(new Track.Point(time, wanted));
      time += step.rampTime(now);
      now = step.shelfTarget();
      shelf.add(new Track.Point(time, now));
      time += step.hold();
      shelf.add(new Track.Point(time, now));
      pressure.add(new Track.Point(time, wanted));
    }
    double backfill = starts.getOrDefault(RecipePhase.BACKFILL, time);
    double secondary = starts.getOrDefault(RecipePhase.SECONDARY_DRYING, backfill);
    double primary = starts.getOrDefault(RecipePhase.PRIMARY_DRYING, secondary);
    double evacuation = starts.getOrDefault(RecipePhase.EVACUATION, primary);
    return new CycleSchedule(
        Track.through(shelf), Track.through(pressure), evacuation, secondary, backfill, time);
  }
}
