package org.firnline.drying.recipe;

/**
 * Heat that a vessel and its frozen product store.
 *
 * @param vessel share of the vessel that follows the product, J/K; 0 or more
 * @param frozen frozen product at the start, J/K; 0 or more; shrinks with the ice
 */
public record ThermalMass(double vessel, double frozen) {

  public ThermalMass {
    if (!(vessel >= 0) || !(frozen >= 0)) {
      throw new IllegalArgumentException("a heat capacity is negative");
    }
  }

  /** Heat capacity with {@code fraction} of the thickness dried, J/K. */
  double at(double fraction) {
    return vessel + frozen * (1 - fraction);
  }

  /** Both parts multiplied by {@code factor}. */
  public ThermalMass times(double factor) {
    return new ThermalMass(vessel * factor, frozen * factor);
  }
}
