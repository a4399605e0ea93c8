package org.firnline.drying.primary;

import org.firnline.lab.CakeResistance;
import org.firnline.lab.Solution;

/**
 * A flat layer in a straight-walled vessel, drying from the top down with heat from below.
 *
 * @param iceMass ice at the start, kg; positive
 * @param thickness frozen depth L, m; positive
 * @param productArea A_p: area of the front, m2; positive
 * @param vesselArea A_v: area that faces the shelf, m2; positive
 * @param frozenConductivity k_f, W/(m K); positive, infinite for a perfect conductor
 */
public record Slab(
    double iceMass,
    double thickness,
    double productArea,
    double vesselArea,
    double frozenConductivity)
    implements FrontGeometry {

  public Slab {
    Positive.require(iceMass, "ice mass");
    Positive.require(thickness, "frozen depth");
    Positive.require(productArea, "product area");
    Positive.require(vesselArea, "vessel area");
    Positive.require(frozenConductivity, "frozen conductivity");
  }

  /**
   * The layer that {@code fill_m3} of {@code solution} freezes to.
   *
   * @param productArea inner cross-section of the vessel, m2
   * @param vesselArea outer bottom area of the vessel, m2
   */
  public static Slab of(Solution solution, double fill_m3, double productArea, double vesselArea) {
    return new Slab(
        solution.iceMass(fill_m3),
        solution.frozenVolume(fill_m3) / productArea,
        productArea,
        vesselArea,
        solution.frozenConductivity());
  }

  @Override
  public double icePerDepth(double depth_m) {
    return iceMass / thickness;
  }

  @Override
  public double cakeResistance(CakeResistance cake, double depth_m) {
    return cake.at(depth_m) / productArea;
  }

  @Override
  public double outerConductance(double coefficient, double depth_m) {
    return 1 / (1 / (vesselArea * coefficient) + frozenResistance(depth_m));
  }

  @Override
  public double frozenResistance(double depth_m) {
    return (thickness - depth_m) / (frozenConductivity * productArea);
  }

  @Override
  public double surfaceArea() {
    return productArea;
  }

  @Override
  public double depthAtDriedFraction(double fraction) {
    return fraction * thickness;
  }

  @Override
  public double driedFractionAt(double depth_m) {
    return depth_m / thickness;
  }

  @Override
  public double curvature() {
    return 0;
  }

  @Override
  public Slab filledBy(double factor) {
    return new Slab(
        iceMass * factor, thickness * factor, productArea, vesselArea, frozenConductivity);
  }
}
