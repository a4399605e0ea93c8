package org.firnline.planning.point;

/**
 * The fastest settings at one moment.
 *
 * @param shelf shelf temperature, K
 * @param pressure chamber pressure, Pa
 * @param totalRate vapor of the whole load, kg/s
 * @param warmest warmest frozen point of any vessel, K
 * @param limitedBy what forbids a warmer shelf there
 */
public record BestPoint(
    double shelf, double pressure, double totalRate, double warmest, Limit limitedBy) {

  /** What forbids a warmer shelf. */
  public enum Limit {
    /** The product would get too warm. */
    PRODUCT,
    /** The dryer would not carry the vapor. */
    DRYER,
    /** The shelves get no warmer. */
    SHELF
  }
}
