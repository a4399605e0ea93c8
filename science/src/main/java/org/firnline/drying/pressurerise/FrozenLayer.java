package org.firnline.drying.pressurerise;

import org.firnline.matter.FeistelWagner2006Ice;

/**
 * The ice that is left below the front.
 *
 * @param thickness m; positive
 * @param conductivity W/(m K); positive
 * @param heatPerVolume ρ c, J/(m3 K); positive
 */
public record FrozenLayer(double thickness, double conductivity, double heatPerVolume) {

  private static final double ATMOSPHERE_PA = 101_325;

  public FrozenLayer {
    if (!(thickness > 0) || !(conductivity > 0) || !(heatPerVolume > 0)) {
      throw new IllegalArgumentException(
          "thickness, conductivity and heat capacity of the frozen layer must be positive");
    }
  }

  /** Ice at {@code temperature_K} with the density and heat capacity of IAPWS R10-06. */
  public static FrozenLayer ofIce(double thickness, double conductivity, double temperature_K) {
    var ice = new FeistelWagner2006Ice();
    double heatPerVolume =
        ice.density(temperature_K, ATMOSPHERE_PA) * ice.heatCapacity(temperature_K, ATMOSPHERE_PA);
    return new FrozenLayer(thickness, conductivity, heatPerVolume);
  }
}
