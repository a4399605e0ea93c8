package org.firnline.matter;

/** Pressure of water vapor in equilibrium with ice, and its inverse. */
public interface IceVaporPressure {

  /**
   * Equilibrium pressure.
   *
   * @param temperature_K ice temperature, within {@link #lowestTemperature()} and the triple point
   * @return pressure in Pa
   * @throws IllegalArgumentException outside the valid range
   */
  double pressure(double temperature_K);

  /**
   * Slope of the logarithm of the equilibrium pressure.
   *
   * @param temperature_K as for {@link #pressure}
   * @return d(ln p)/dT in 1/K
   */
  double logarithmicSlope(double temperature_K);

  /** The coldest temperature at which the equation is valid, K. */
  double lowestTemperature();

  /**
   * The ice temperature at which the equilibrium pressure is {@code pressure_Pa}.
   *
   * @param pressure_Pa between the pressure at {@link #lowestTemperature()} and the triple point
   * @return temperature in K, to about 1e-13 relative
   * @throws IllegalArgumentException outside the valid range
   */
  default double saturationTemperature(double pressure_Pa) {
    double low = lowestTemperature();
    double high = Water.TRIPLE_POINT_TEMPERATURE;
    if (pressure_Pa == Water.TRIPLE_POINT_PRESSURE) {
      return high;
    }
    if (!(pressure_Pa >= pressure(low)) || !(pressure_Pa <= pressure(high))) {
      throw new IllegalArgumentException(
          "no ice has the vapor pressure "
              + pressure_Pa
              + " Pa: between "
              + pressure(low)
              + " and "
              + pressure(high)
              + " Pa");
    }
    double logarithm = Math.log(pressure_Pa);
    double temperature = Math.min(high, Math.max(low, 6150 / (28.9 - logarithm)));
    for (int iteration = 0; iteration < 60; iteration++) {
      double excess = Math.log(pressure(temperature)) - logarithm;
      if (excess > 0) {
        high = temperature;
      } else {
        low = temperature;
      }
      double next = temperature - excess / logarithmicSlope(temperature);
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - temperature) <= 1e-14 * temperature) {
        return next;
      }
      temperature = next;
    }
    return temperature;
  }
}
