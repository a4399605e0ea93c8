package org.firnline.drying.primary;

/**
 * The balance at one dried depth.
 *
 * @param depth dried depth ℓ, m
 * @param frontTemperature T_i, K
 * @param bottomTemperature T_b at the wall or bottom, K
 * @param rate vapor leaving the vessel, kg/s; 0 where nothing sublimes
 */
public record FrontState(
    double depth, double frontTemperature, double bottomTemperature, double rate) {

  /** The warmest frozen point, K: limits apply to this. */
  public double warmest() {
    return Math.max(frontTemperature, bottomTemperature);
  }
}
