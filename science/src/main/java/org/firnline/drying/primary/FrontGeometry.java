package org.firnline.drying.primary;

import org.firnline.lab.CakeResistance;

/**
 * The shape through which the ice front retreats. Depths are measured from the free surface: 0 when
 * drying starts, {@link #thickness()} when the ice is gone.
 */
public interface FrontGeometry {

  /** Thickness of the frozen product, m. */
  double thickness();

  /** Ice that vanishes per dried depth at {@code depth_m}, kg/m. */
  double icePerDepth(double depth_m);

  /** Resistance to vapor of the cake above the front at {@code depth_m}, Pa s/kg. */
  double cakeResistance(CakeResistance cake, double depth_m);

  /**
   * Conductance from the heat source outside to the front at {@code depth_m}, W/K.
   *
   * @param coefficient heat-transfer coefficient on the outer area, W/(m2 K); may be infinite
   */
  double outerConductance(double coefficient, double depth_m);

  /**
   * Resistance to heat of the frozen layer left between the front at {@code depth_m} and the wall
   * or bottom, K/W.
   */
  double frozenResistance(double depth_m);

  /** Area of the free surface, through which heat from above arrives, m2. */
  double surfaceArea();

  /** Depth at which {@code fraction} of the ice is gone, m. */
  double depthAtDriedFraction(double fraction);

  /** Share of the ice that is gone when the front is at {@code depth_m}, 0 to 1. */
  double driedFractionAt(double depth_m);

  /**
   * How much the front narrows while the product freezes from the wall inward: share of the disc
   * inside the wall that the frozen product takes, 0 for a flat layer, below 1.
   */
  double curvature();

  /** Ice in the vessel at the start, kg. */
  double iceMass();

  /** The same vessel filled with {@code factor} times as much. */
  FrontGeometry filledBy(double factor);
}
