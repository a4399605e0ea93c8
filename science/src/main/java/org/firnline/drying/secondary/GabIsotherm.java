package org.firnline.drying.secondary;

import org.firnline.matter.Humidity;

/**
 * Moisture in equilibrium with humidity: C = C_m c k a / ((1 − k a)(1 − k a + c k a)), with a the
 * water activity, which is the vapor pressure over that of liquid water at the same temperature
 * (supercooled below 0 °C). For k = 1 it is the isotherm of Brunauer, Emmett and Teller.
 *
 * <p>Assumes constants that do not depend on temperature.
 *
 * <p>Valid: activity 0 to about 0.9, below 1/k.
 *
 * <p>Source: Guggenheim, Anderson and de Boer; that it holds more generally than BET and fits milk
 * powders: Timmermann et al., J. Food Eng. 48, 19 (2001), Lin et al., J. Food Eng. 68, 257 (2005)
 * (forms only).
 *
 * @param monolayer C_m, kg water per kg dry solids; positive
 * @param binding c; positive
 * @param multilayer k; above 0 to 1
 */
public record GabIsotherm(double monolayer, double binding, double multilayer) {

  private static final Humidity HUMIDITY = new Humidity();

  public GabIsotherm {
    if (!(monolayer > 0) || !(binding > 0) || !(multilayer > 0 && multilayer <= 1)) {
      throw new IllegalArgumentException(
          "isotherm constants "
              + monolayer
              + ", "
              + binding
              + ", "
              + multilayer
              + " must be positive and the last at most 1");
    }
  }

  /** C in kg/kg at {@code activity}, 0 to below 1/k. */
  public double moisture(double activity) {
    double scaled = multilayer * activity;
    if (!(activity >= 0) || !(scaled < 1)) {
      throw new IllegalArgumentException(
          "water activity " + activity + " is outside 0 to " + 1 / multilayer);
    }
    return monolayer * binding * scaled / ((1 - scaled) * (1 - scaled + binding * scaled));
  }

  /**
   * C in kg/kg under vapor of {@code vaporPressure_Pa} at {@code temperature_K}.
   *
   * @throws IllegalArgumentException where the vapor would condense instead
   */
  public double under(double vaporPressure_Pa, double temperature_K) {
    return moisture(HUMIDITY.relative(vaporPressure_Pa, temperature_K));
  }
}
