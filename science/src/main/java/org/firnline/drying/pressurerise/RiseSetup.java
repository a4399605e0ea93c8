package org.firnline.drying.pressurerise;

/**
 * The shut chamber and its load.
 *
 * @param volume of the chamber that is shut off, m3; positive
 * @param gasTemperature of the vapor in it, K; positive
 * @param productArea A_p of all vessels together, m2; positive
 * @param startPressure P₀ when the valve shuts, Pa; positive
 */
public record RiseSetup(
    double volume, double gasTemperature, double productArea, double startPressure) {

  public RiseSetup {
    if (!(volume > 0) || !(gasTemperature > 0) || !(productArea > 0) || !(startPressure > 0)) {
      throw new IllegalArgumentException(
          "chamber volume, gas temperature, product area and start pressure must be positive");
    }
  }

  /**
   * Pressure rise per vapor flux, Pa m2/kg: R_v T A_p/V.
   *
   * <p>With it the vapor side is dP/dt = rise (p_i − P)/R.
   */
  double risePerFlux() {
    return PressureRise.rate(productArea, gasTemperature, volume);
  }

  /**
   * k = N A_p R_v T/(V R): how fast the chamber fills, 1/s.
   *
   * @param resistance cake and mouth together on the product area, m/s; positive
   */
  public double fillingRate(double resistance) {
    return risePerFlux() / resistance;
  }
}
