package org.firnline.drying.secondary;

/** The moisture a solid keeps however long it is dried. */
public sealed interface EquilibriumMoisture {

  /**
   * C_eq at a temperature.
   *
   * @param temperature_K of the solid, positive
   * @return kg water per kg dry solids, 0 or more
   */
  double at(double temperature_K);

  /**
   * The same moisture at every temperature.
   *
   * @param moisture kg/kg; 0 or more
   */
  record Constant(double moisture) implements EquilibriumMoisture {

    public Constant {
      if (!(moisture >= 0)) {
        throw new IllegalArgumentException("equilibrium moisture " + moisture + " is negative");
      }
    }

    @Override
    public double at(double temperature_K) {
      return moisture;
    }
  }

  /**
   * The moisture in equilibrium with vapor of a given pressure: the warmer the solid, the drier.
   *
   * @param isotherm of the solid
   * @param vaporPressure of water in the chamber, Pa; 0 or more
   */
  record UnderVapor(GabIsotherm isotherm, double vaporPressure) implements EquilibriumMoisture {

    public UnderVapor {
      if (!(vaporPressure >= 0)) {
        throw new IllegalArgumentException("vapor pressure " + vaporPressure + " Pa is negative");
      }
    }

    @Override
    public double at(double temperature_K) {
      return isotherm.under(vaporPressure, temperature_K);
    }
  }
}
