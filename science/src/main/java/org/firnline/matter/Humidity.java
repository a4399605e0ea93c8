package org.firnline.matter;

/**
 * Frost point, dew point and relative humidity of water vapor of a given pressure.
 *
 * <p>Relative humidity is over liquid water at every temperature, as meteorology defines it, also
 * below 0 °C; humidity over ice is named so.
 *
 * <p>Assumes an ideal gas and no enhancement by air, which amounts to 0.42 % at atmospheric
 * pressure (270 K) and to nothing under vacuum.
 *
 * <p>Valid: ice 50 K to 273.16 K, liquid 123 K to 647 K.
 *
 * <p>Source: ice by IAPWS R14-08, liquid by IAPWS SR1-86 from 0 °C and by Murphy &amp; Koop (2005),
 * equation 10, below.
 */
public final class Humidity {

  private final IceVaporPressure ice;
  private final LiquidVaporPressure warm;
  private final LiquidVaporPressure supercooled;

  /** With the equations of reference. */
  public Humidity() {
    this.ice = new WagnerEtAl2011Ice();
    this.warm = new WagnerPruss1993Liquid();
    this.supercooled = new MurphyKoop2005Liquid();
  }

  /** Vapor pressure of liquid water at {@code temperature_K}, supercooled below 0 °C, Pa. */
  public double overLiquid(double temperature_K) {
    return temperature_K >= warm.lowestTemperature()
        ? warm.pressure(temperature_K)
        : supercooled.pressure(temperature_K);
  }

  /** Vapor pressure over ice at {@code temperature_K}, the frost point of that pressure, Pa. */
  public double overIce(double temperature_K) {
    return ice.pressure(temperature_K);
  }

  /**
   * Vapor pressure over whichever of ice and liquid is stable at {@code temperature_K}, Pa: what a
   * product at that temperature is compared with.
   */
  public double overStablePhase(double temperature_K) {
    return temperature_K < Water.TRIPLE_POINT_TEMPERATURE
        ? overIce(temperature_K)
        : overLiquid(temperature_K);
  }

  /** Relative humidity over liquid water, 1 for saturation, of vapor of {@code pressure_Pa}. */
  public double relative(double pressure_Pa, double temperature_K) {
    return pressure_Pa / overLiquid(temperature_K);
  }

  /** Relative humidity over ice, 1 for saturation, of vapor of {@code pressure_Pa}. */
  public double relativeOverIce(double pressure_Pa, double temperature_K) {
    return pressure_Pa / overIce(temperature_K);
  }

  /** Dew point of vapor of {@code pressure_Pa}, K; that of supercooled water below 0 °C. */
  public double dewPoint(double pressure_Pa) {
    return pressure_Pa >= warm.pressure(warm.lowestTemperature())
        ? warm.saturationTemperature(pressure_Pa)
        : supercooled.saturationTemperature(pressure_Pa);
  }

  /** Frost point of vapor of {@code pressure_Pa}, K; below the triple-point pressure. */
  public double frostPoint(double pressure_Pa) {
    return ice.saturationTemperature(pressure_Pa);
  }
}
