package org.firnline.planning.forecast;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Band;

/**
 * The window map with its doubt: drying time and risk over chamber pressure and shelf temperature,
 * with the lines that bound the choice. Bands hold nine chances in ten.
 *
 * @param pressures_Pa the columns, rising
 * @param shelves_K the rows, rising
 * @param cells one list a row
 * @param productLimit_K per column, the shelf at which the warmest vessel reaches its critical
 *     temperature; empty where it does so in hardly any run within the rows
 * @param confidentLimit_K per column, the warmest shelf that keeps the accepted risk; empty where
 *     even the coldest row does not
 * @param capabilityLimit_K per column, the shelf at which the load gives off as much vapor as the
 *     dryer carries; empty where that is in hardly any run within the rows
 * @param collectorFloor_Pa pressure below which the collector itself gives off vapor
 * @param risk accepted for {@code confidentLimit_K}
 * @param runs how many runs were drawn for every cell
 */
public record WindowWithDoubt(
    List<Double> pressures_Pa,
    List<Double> shelves_K,
    List<List<Cell>> cells,
    List<Optional<Band>> productLimit_K,
    List<Optional<Double>> confidentLimit_K,
    List<Optional<Band>> capabilityLimit_K,
    double collectorFloor_Pa,
    double risk,
    int runs) {

  /**
   * One setting.
   *
   * @param lastTime_s until the last vessel is dry; infinite where it never is, or melts
   * @param overheatingRisk share of the runs in which some vessel exceeds its critical temperature
   */
  public record Cell(Band lastTime_s, double overheatingRisk) {}

  public WindowWithDoubt {
    pressures_Pa = List.copyOf(pressures_Pa);
    shelves_K = List.copyOf(shelves_K);
    cells = cells.stream().map(List::copyOf).toList();
    productLimit_K = List.copyOf(productLimit_K);
    confidentLimit_K = List.copyOf(confidentLimit_K);
    capabilityLimit_K = List.copyOf(capabilityLimit_K);
  }
}
