package org.firnline.planning.ask;

/**
 * Frozen product as heat and vapor meet it.
 *
 * @param volume frozen volume, m3; positive
 * @param thickness greatest way of the front through it, m; positive
 * @param heatArea glass or metal it touches, through which heat arrives, m2; positive
 * @param freeArea ice surface open to the vacuum at the start, m2; positive
 */
public record IceLayer(double volume, double thickness, double heatArea, double freeArea) {

  public IceLayer {
    Given.positive(volume, "frozen volume", "m3");
    Given.positive(thickness, "layer thickness", "m");
    Given.positive(heatArea, "area of the layer", "m2");
    Given.positive(freeArea, "free surface of the layer", "m2");
  }

  /** An even layer in a vial or tray with straight walls, on {@code area_m2}. */
  public static IceLayer flat(double volume_m3, double area_m2) {
    Given.positive(area_m2, "area of the layer", "m2");
    return new IceLayer(volume_m3, volume_m3 / area_m2, area_m2, area_m2);
  }

  /** Volume over heated area, m: the thickness if the wall were flat. */
  public double meanThickness() {
    return volume / heatArea;
  }
}
