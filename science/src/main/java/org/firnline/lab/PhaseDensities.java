package org.firnline.lab;

import org.firnline.matter.Water;

/**
 * Densities of what a frozen product is made of.
 *
 * @param ice kg/m3; positive
 * @param solids dry solids, kg/m3; positive
 * @param unfrozenWater water that stays unfrozen among the solids, kg/m3; positive
 */
public record PhaseDensities(double ice, double solids, double unfrozenWater) {

  /**
   * Ice and water as in {@link Water}; solids like dry disaccharides, 1590 kg/m3. Source of the
   * last: handbook value for crystalline sucrose (from memory).
   */
  public static final PhaseDensities TYPICAL =
      new PhaseDensities(Water.ICE_DENSITY, 1_590, Water.LIQUID_DENSITY);

  public PhaseDensities {
    Check.positive(ice, "ice density", "kg/m3");
    Check.positive(solids, "solids density", "kg/m3");
    Check.positive(unfrozenWater, "density of unfrozen water", "kg/m3");
  }
}
