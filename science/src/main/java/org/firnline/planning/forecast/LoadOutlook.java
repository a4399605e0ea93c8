package org.firnline.planning.forecast;

import java.util.List;
import org.firnline.evidence.Band;

/**
 * What a program is expected to do with a load. Bands hold nine chances in ten; an infinite time is
 * a run that never ends or spoils the load.
 *
 * @param typicalTime_s until the typical vessel of the slowest item is dry
 * @param lastTime_s until the last vessel of the load is dry
 * @param warmest_K greatest temperature of any frozen point
 * @param overheatingRisk share of the drawn runs in which some vessel exceeds its critical
 *     temperature
 * @param pressureRisk share of the drawn runs in which the chamber pressure rises above its setting
 * @param peakRate_kg_per_s greatest vapor rate of the whole load
 * @param peakPressure_Pa greatest chamber pressure; infinite where the dryer carries the load at
 *     none
 * @param items each item of the load, in its order
 * @param runs how many runs were drawn
 */
public record LoadOutlook(
    Band typicalTime_s,
    Band lastTime_s,
    Band warmest_K,
    double overheatingRisk,
    double pressureRisk,
    Band peakRate_kg_per_s,
    Band peakPressure_Pa,
    List<ItemForecast> items,
    int runs) {

  public LoadOutlook {
    items = List.copyOf(items);
  }

  /** Whether the load dries in the middle of what is expected. */
  public boolean dries() {
    return Double.isFinite(lastTime_s.best());
  }
}
