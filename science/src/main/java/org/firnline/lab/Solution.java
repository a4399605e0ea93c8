package org.firnline.lab;

/**
 * What is filled into a vessel, before freezing.
 *
 * @param density of the liquid, kg/m3; positive
 * @param solidsFraction mass of solids per mass of liquid, kg/kg; 0 to below 1
 * @param unfrozenPerSolids water that never freezes per mass of solids, kg/kg; 0 for solutes that
 *     crystallise fully
 * @param phases densities of ice, solids and unfrozen water
 * @param frozenConductivity thermal conductivity of the frozen product, W/(m K); positive
 */
public record Solution(
    double density,
    double solidsFraction,
    double unfrozenPerSolids,
    PhaseDensities phases,
    double frozenConductivity) {

  /**
   * Conductivity of frozen dilute solutions, W/(m K). Published values for ice spread from 2.07 to
   * 2.24 at 0 °C and reach 2.6 at −40 °C (Yen, CRREL Report 81-10, 1981).
   */
  public static final double TYPICAL_FROZEN_CONDUCTIVITY = 2.3;

  public Solution {
    Check.positive(density, "solution density", "kg/m3");
    Check.notNegative(solidsFraction, "solids", "kg/kg");
    Check.notNegative(unfrozenPerSolids, "unfrozen water", "kg/kg");
    Check.positive(frozenConductivity, "frozen conductivity", "W/(m K)");
    Check.that(
        solidsFraction * (1 + unfrozenPerSolids) < 1,
        "no-ice",
        "solids",
        "solids of "
            + solidsFraction
            + " kg/kg with "
            + unfrozenPerSolids
            + " kg/kg unfrozen water",
        "leave no ice to dry",
        "lower the solids or the unfrozen water");
  }

  /**
   * A solution with the usual phase densities and conductivity, all of its water freezable.
   *
   * @param density kg/m3
   * @param solidsFraction kg/kg
   */
  public static Solution typical(double density, double solidsFraction) {
    return new Solution(
        density, solidsFraction, 0, PhaseDensities.TYPICAL, TYPICAL_FROZEN_CONDUCTIVITY);
  }

  /** Mass of {@code volume_m3} of this liquid, kg. */
  public double mass(double volume_m3) {
    return density * volume_m3;
  }

  /** Mass of dry solids in {@code volume_m3} of this liquid, kg. */
  public double solidsMass(double volume_m3) {
    return mass(volume_m3) * solidsFraction;
  }

  /** Mass of water in {@code volume_m3} of this liquid that stays unfrozen, kg. */
  public double unfrozenMass(double volume_m3) {
    return solidsMass(volume_m3) * unfrozenPerSolids;
  }

  /** Mass of ice that {@code volume_m3} of this liquid leaves when frozen, kg. */
  public double iceMass(double volume_m3) {
    return mass(volume_m3) - solidsMass(volume_m3) - unfrozenMass(volume_m3);
  }

  /** Volume of the frozen product from {@code volume_m3} of this liquid, m3. */
  public double frozenVolume(double volume_m3) {
    return iceMass(volume_m3) / phases.ice()
        + solidsMass(volume_m3) / phases.solids()
        + unfrozenMass(volume_m3) / phases.unfrozenWater();
  }
}
