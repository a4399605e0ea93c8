package org.firnline.drying.freezing;

import org.firnline.drying.primary.FrontGeometry;
import org.firnline.lab.Solution;
import org.firnline.matter.Water;

/**
 * One vessel as freezing sees it.
 *
 * @param liquidHeat heat capacity of the liquid and the glass that follows it, J/K; positive
 * @param frozenHeat heat capacity when frozen, J/K; positive
 * @param latentHeat heat that all of its ice sets free, J; positive
 * @param depth frozen depth, m; positive
 * @param area of the front, m2; positive
 * @param coefficient from shelf to product on {@code area}, W/(m2 K); positive
 * @param conductivity of the frozen product, W/(m K); positive
 * @param freezingPoint K; positive
 * @param curvature of the front as in {@link FrontGeometry#curvature}: 0 for a flat layer, to below
 *     1 for a shell on a flask wall
 */
public record FreezingVessel(
    double liquidHeat,
    double frozenHeat,
    double latentHeat,
    double depth,
    double area,
    double coefficient,
    double conductivity,
    double freezingPoint,
    double curvature) {

  /** Liquid water, J/(kg K). Source: IAPWS SR6-08 at 298.15 K, 4181. */
  private static final double LIQUID_SPECIFIC_HEAT = 4_181;

  /** Ice at −20 °C, J/(kg K). Source: IAPWS R10-06, 1950. */
  private static final double ICE_SPECIFIC_HEAT = 1_950;

  /** Dry sugars and proteins, J/(kg K), rounded (from memory). */
  private static final double SOLIDS_SPECIFIC_HEAT = 1_400;

  /** Below this curvature a shell is flat to 1e-6 and its closed form loses digits. */
  private static final double FLAT = 1e-6;

  public FreezingVessel {
    requirePositive(liquidHeat, "liquid heat capacity");
    requirePositive(frozenHeat, "frozen heat capacity");
    requirePositive(latentHeat, "latent heat");
    requirePositive(depth, "frozen depth");
    requirePositive(area, "area");
    requirePositive(coefficient, "heat-transfer coefficient");
    requirePositive(conductivity, "frozen conductivity");
    requirePositive(freezingPoint, "freezing point");
    if (!(curvature >= 0 && curvature < 1)) {
      throw new IllegalArgumentException("curvature " + curvature + " is not between 0 and 1");
    }
  }

  /** A flat layer. */
  public FreezingVessel(
      double liquidHeat,
      double frozenHeat,
      double latentHeat,
      double depth,
      double area,
      double coefficient,
      double conductivity,
      double freezingPoint) {
    this(
        liquidHeat,
        frozenHeat,
        latentHeat,
        depth,
        area,
        coefficient,
        conductivity,
        freezingPoint,
        0);
  }

  /**
   * Frozen product of any shape, frozen from the side from which it will be heated.
   *
   * @param conductance from the surroundings to bottom or wall, W/K; positive
   * @param liquidHeat heat capacity of liquid and glass, J/K; positive
   * @param frozenHeat heat capacity of frozen product and glass, J/K; positive
   * @param freezingPoint K
   */
  public static FreezingVessel of(
      FrontGeometry geometry,
      double conductance,
      double liquidHeat,
      double frozenHeat,
      double freezingPoint) {
    double area = geometry.surfaceArea();
    return new FreezingVessel(
        liquidHeat,
        frozenHeat,
        Water.FUSION_ENTHALPY * geometry.iceMass(),
        geometry.thickness(),
        area,
        conductance / area,
        geometry.thickness() / (area * geometry.frozenResistance(0)),
        freezingPoint,
        geometry.curvature());
  }

  /**
   * A straight-walled vessel with {@code fill_m3} of {@code solution}.
   *
   * @param area inner cross-section, m2
   * @param coefficient from shelf to product on {@code area}, W/(m2 K); a vial's K_v at atmospheric
   *     pressure times A_v/A_p
   * @param wallHeat heat capacity of the glass that follows the product, J/K; 0 or more
   * @param freezingPoint K
   */
  public static FreezingVessel of(
      Solution solution,
      double fill_m3,
      double area,
      double coefficient,
      double wallHeat,
      double freezingPoint) {
    double solids = solution.solidsMass(fill_m3);
    double water = solution.mass(fill_m3) - solids;
    double ice = solution.iceMass(fill_m3);
    double dry = SOLIDS_SPECIFIC_HEAT * solids + wallHeat;
    return new FreezingVessel(
        LIQUID_SPECIFIC_HEAT * water + dry,
        ICE_SPECIFIC_HEAT * ice + LIQUID_SPECIFIC_HEAT * (water - ice) + dry,
        Water.FUSION_ENTHALPY * ice,
        solution.frozenVolume(fill_m3) / area,
        area,
        coefficient,
        solution.frozenConductivity(),
        freezingPoint);
  }

  /** K/W from the shelf to the bottom of the product. */
  double contactResistance() {
    return 1 / (coefficient * area);
  }

  /** K/W through the whole frozen layer. */
  double layerResistance() {
    return depth / (conductivity * area);
  }

  /** Share of the layer's resistance when {@code share} of the ice has formed: ln(1−sφ)/ln(1−s). */
  double layerShare(double share) {
    return curvature < FLAT ? share : Math.log1p(-curvature * share) / Math.log1p(-curvature);
  }

  /** ∫ of {@link #layerShare} from 0: φ²/2 in a flat layer. */
  double layerIntegral(double share) {
    if (curvature < FLAT) {
      return share * share / 2;
    }
    double left = -curvature * share;
    return ((1 + left) * Math.log1p(left) - left) / (-curvature * Math.log1p(-curvature));
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " " + value + " is not positive");
    }
  }
}
