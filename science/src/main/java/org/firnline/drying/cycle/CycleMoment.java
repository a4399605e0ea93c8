package org.firnline.drying.cycle;

import java.util.List;

/**
 * The cycle at one time, as true as the simulation is: without noise, lag or bias.
 *
 * @param time s
 * @param shelfSetPoint K
 * @param shelf K
 * @param pressure true chamber pressure, Pa
 * @param vaporShare share of the gas in the chamber that is vapor, 0 to 1
 * @param collector K
 * @param vaporRate vapor of the whole load, kg/s
 * @param products bottom temperature of each watched vessel, K
 */
public record CycleMoment(
    double time,
    double shelfSetPoint,
    double shelf,
    double pressure,
    double vaporShare,
    double collector,
    double vaporRate,
    List<Double> products) {

  public CycleMoment {
    products = List.copyOf(products);
  }
}
