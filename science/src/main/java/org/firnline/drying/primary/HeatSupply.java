package org.firnline.drying.primary;

import org.firnline.lab.HeatTransfer;

/**
 * Heat sources around a vessel at one moment.
 *
 * @param coefficient K*: coefficient on the outer area, shelf and wall together, W/(m2 K); 0 or
 *     more
 * @param temperature T*: temperature of that source, K
 * @param above source above the product
 */
public record HeatSupply(double coefficient, double temperature, Above above) {

  /**
   * A warm surface above the product; its heat crosses the growing cake.
   *
   * @param coefficient radiation and gas from that surface to the cake, W/(m2 K); 0 where there is
   *     none, may be infinite
   * @param cakeConductivity k_cake, W/(m K); positive
   * @param temperature of that surface, K
   */
  public record Above(double coefficient, double cakeConductivity, double temperature) {

    /** Nothing warm above. */
    public static final Above NONE = new Above(0, 1, 273.16);

    /** Conductance through {@code area_m2} and a cake of {@code depth_m}, W/K. */
    public double conductance(double area_m2, double depth_m) {
      return coefficient == 0 ? 0 : area_m2 / (1 / coefficient + depth_m / cakeConductivity);
    }
  }

  /** Heat from a shelf at {@code shelf_K} and chamber pressure {@code pressure_Pa} only. */
  public static HeatSupply fromShelf(HeatTransfer transfer, double shelf_K, double pressure_Pa) {
    return new HeatSupply(transfer.at(pressure_Pa), shelf_K, Above.NONE);
  }

  /**
   * This supply with heat from a side wall added, both referred to the outer bottom area.
   *
   * @param side K_side, W/(m2 K); 0 or more
   * @param wall_K wall temperature
   */
  public HeatSupply withWall(double side, double wall_K) {
    double sum = coefficient + side;
    double mean = sum == 0 ? temperature : (coefficient * temperature + side * wall_K) / sum;
    return new HeatSupply(sum, mean, above);
  }

  /** This supply with a warm surface above. */
  public HeatSupply withAbove(Above surface) {
    return new HeatSupply(coefficient, temperature, surface);
  }
}
