package org.firnline.matter;

/** Heat that turns ice into vapor at the same temperature. */
@FunctionalInterface
public interface SublimationEnthalpy {

  /**
   * Specific enthalpy of sublimation.
   *
   * @param temperature_K ice temperature, 30 K to 273.16 K
   * @return J/kg
   */
  double specific(double temperature_K);

  /** The same heat at every temperature, for published examples that use one number. */
  static SublimationEnthalpy constant(double joulesPerKilogram) {
    return temperature_K -> joulesPerKilogram;
  }
}
