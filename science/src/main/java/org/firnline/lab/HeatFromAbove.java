package org.firnline.lab;

import org.firnline.evidence.Estimate;

/**
 * How heat from a warm surface above crosses to the ice: radiation and gas to the cake, then
 * conduction through the dried cake.
 *
 * @param coefficient from that surface to the top of the cake, W/(m2 K); positive
 * @param cakeConductivity of the dried cake at drying pressure, W/(m K); positive
 */
public record HeatFromAbove(Estimate coefficient, double cakeConductivity) {

  public HeatFromAbove {
    Check.positive(coefficient.best(), "heat transfer from above", "W/(m2 K)");
    Check.positive(cakeConductivity, "cake conductivity", "W/(m K)");
  }
}
