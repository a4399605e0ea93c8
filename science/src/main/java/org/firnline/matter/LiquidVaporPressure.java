package org.firnline.matter;

import org.firnline.numerics.Root;

/** Pressure of water vapor in equilibrium with liquid water, and its inverse. */
public interface LiquidVaporPressure {

  /**
   * Equilibrium pressure.
   *
   * @param temperature_K between {@link #lowestTemperature()} and {@link #highestTemperature()}
   * @return pressure in Pa
   * @throws IllegalArgumentException outside the valid range
   */
  double pressure(double temperature_K);

  /** The coldest temperature at which the equation is valid, K. */
  double lowestTemperature();

  /** The warmest temperature at which the equation is valid, K. */
  double highestTemperature();

  /**
   * The temperature at which liquid water is in equilibrium with {@code pressure_Pa}: the dew point
   * of vapor of that pressure.
   *
   * @return temperature in K
   * @throws IllegalArgumentException outside the valid range
   */
  default double saturationTemperature(double pressure_Pa) {
    double low = lowestTemperature();
    double high = highestTemperature();
    if (!(pressure_Pa >= pressure(low) && pressure_Pa <= pressure(high))) {
      throw new IllegalArgumentException(
          "vapor pressure "
              + pressure_Pa
              + " Pa is outside "
              + pressure(low)
              + " to "
              + pressure(high)
              + " Pa");
    }
    double logarithm = Math.log(pressure_Pa);
    return Root.find(temperature -> Math.log(pressure(temperature)) - logarithm, low, high);
  }
}
