package org.firnline.drying.gauge;

import org.firnline.matter.Water;

/**
 * Mole fraction of water vapor in the chamber: x_w = n_w/(n_w + n_g).
 *
 * <p>Assumes that vapor and gas leave the chamber in the proportion in which they enter it, and
 * that the collector takes all vapor.
 *
 * <p>Source: mole balance of the chamber, derivation in docs/science.md.
 */
public final class VaporShare {

  private VaporShare() {}

  /**
   * The share where the flow of leak and bleed gas is known.
   *
   * @param vaporRate_kg_per_s vapor from all vessels; 0 or more
   * @param gas_mol_per_s leak and bleed gas; 0 or more, not both 0
   */
  public static double withGas(double vaporRate_kg_per_s, double gas_mol_per_s) {
    double vapor = vaporRate_kg_per_s / Water.MOLAR_MASS;
    if (!(vapor >= 0) || !(gas_mol_per_s >= 0) || !(vapor + gas_mol_per_s > 0)) {
      throw new IllegalArgumentException(
          "flows of " + vapor + " mol/s vapor and " + gas_mol_per_s + " mol/s gas make no mixture");
    }
    return vapor / (vapor + gas_mol_per_s);
  }

  /**
   * The share where bleed gas holds the pressure against a pump: n_g = P S/(R T).
   *
   * @param vaporRate_kg_per_s vapor from all vessels; 0 or more
   * @param pressure_Pa chamber pressure; positive
   * @param pumpingSpeed_m3_per_s S at that pressure; positive
   * @param gasTemperature_K of the gas at the pump; positive
   */
  public static double withPump(
      double vaporRate_kg_per_s,
      double pressure_Pa,
      double pumpingSpeed_m3_per_s,
      double gasTemperature_K) {
    return withGas(
        vaporRate_kg_per_s,
        pressure_Pa * pumpingSpeed_m3_per_s / (Water.GAS_CONSTANT * gasTemperature_K));
  }
}
