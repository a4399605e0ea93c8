package org.firnline.drying.primary;

/** The heat around a vessel as shelf temperature and chamber pressure change. */
public interface HeatSource {

  /**
   * What the vessel gets.
   *
   * @param shelf_K shelf temperature; vessels that stand on no shelf ignore it
   * @param pressure_Pa chamber pressure, 0 or more
   */
  HeatSupply at(double shelf_K, double pressure_Pa);

  /** This source with its coefficient multiplied: a vessel that gets more or less of the heat. */
  HeatSource times(double factor);
}
