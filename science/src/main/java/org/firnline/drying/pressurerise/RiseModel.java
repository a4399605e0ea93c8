package org.firnline.drying.pressurerise;

/** How the pressure of a shut chamber rises. */
public interface RiseModel {

  /**
   * Pressures in Pa, one for each time.
   *
   * @param times s since the valve shut; 0 or more, rising
   */
  double[] pressures(RiseSetup setup, RiseState state, double[] times);
}
