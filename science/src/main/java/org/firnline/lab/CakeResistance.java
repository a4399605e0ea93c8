package org.firnline.lab;

/**
 * Resistance of dried cake to vapor, per product area: R_p(ℓ) = R_0 + A_1 ℓ/(1 + A_2 ℓ).
 *
 * <p>Source: Pikal, J. Parenter. Sci. Technol. 39, 115 (1985) and the later trade (form from
 * memory).
 *
 * @param initial R_0, m/s (= Pa m2 s/kg); 0 or more
 * @param growth A_1, 1/s; 0 or more
 * @param leveling A_2, 1/m; 0 or more
 */
public record CakeResistance(double initial, double growth, double leveling) {

  public CakeResistance {
    Check.notNegative(initial, "initial cake resistance", "m/s");
    Check.notNegative(growth, "growth of cake resistance", "1/s");
    Check.notNegative(leveling, "leveling of cake resistance", "1/m");
  }

  /** R_p in m/s under a cake of {@code depth_m}, which is 0 or more. */
  public double at(double depth_m) {
    return initial + growth * depth_m / (1 + leveling * depth_m);
  }

  /** dR_p/dℓ in 1/s under a cake of {@code depth_m}. */
  public double slope(double depth_m) {
    double denominator = 1 + leveling * depth_m;
    return growth / (denominator * denominator);
  }

  /** R_0 and A_1 multiplied by {@code factor}: a denser or more open cake than the typical one. */
  public CakeResistance times(double factor) {
    return new CakeResistance(initial * factor, growth * factor, leveling);
  }
}
