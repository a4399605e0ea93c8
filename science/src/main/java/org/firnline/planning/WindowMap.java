package org.firnline.planning;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Band;

/**
 * Drying time over chamber pressure and shelf temperature, with the limits that bound the choice.
 *
 * @param pressures_Pa the columns, rising
 * @param shelves_K the rows, rising
 * @param dryingTime_s drying time of a typical vessel, one list a row; infinite where nothing dries
 * @param productLimit_K per column, the shelf temperature at which the warmest vessel reaches its
 *     critical temperature: low for the cautious end of the doubt; empty outside the rows
 * @param capabilityLimit_K per column, the shelf temperature at which the load gives off as much
 *     vapor as the dryer carries; empty where the dryer never limits within the rows
 * @param collectorFloor_Pa pressure below which the collector itself gives off vapor
 */
public record WindowMap(
    List<Double> pressures_Pa,
    List<Double> shelves_K,
    List<List<Double>> dryingTime_s,
    List<Optional<Band>> productLimit_K,
    List<Optional<Double>> capabilityLimit_K,
    double collectorFloor_Pa) {

  public WindowMap {
    pressures_Pa = List.copyOf(pressures_Pa);
    shelves_K = List.copyOf(shelves_K);
    dryingTime_s = dryingTime_s.stream().map(List::copyOf).toList();
    productLimit_K = List.copyOf(productLimit_K);
    capabilityLimit_K = List.copyOf(capabilityLimit_K);
  }
}
