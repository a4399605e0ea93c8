package org.firnline.drying.gauge;

import org.firnline.lab.Gauge;
import org.firnline.matter.Water;

/**
 * What a gauge indicates: P (1 + g x_w), with g the gauge's own excess in pure vapor, 0 for a
 * capacitance gauge.
 *
 * <p>Assumes that the excess grows with the mole fraction of vapor and not with pressure.
 *
 * <p>Valid: 1 to 100 Pa; towards the continuum a hot wire reads less, in the end too little.
 *
 * <p>Source: common practice; g published 0.5 to 1.0. From kinetic theory with equal accommodation
 * 1 + g = ((γ + 1)/(γ − 1)/√M) over the same of nitrogen, 1.47 to 1.59.
 */
public final class GaugeReading {

  private GaugeReading() {}

  /**
   * Indicated pressure, Pa.
   *
   * @param pressure_Pa true pressure
   * @param vaporShare x_w, 0 to 1
   */
  public static double indicated(Gauge gauge, double pressure_Pa, double vaporShare) {
    return pressure_Pa * (1 + gauge.excess() * vaporShare);
  }

  /** True pressure in Pa behind an indicated one, where the share of vapor is known. */
  public static double truePressure(Gauge gauge, double indicated_Pa, double vaporShare) {
    return indicated_Pa / (1 + gauge.excess() * vaporShare);
  }

  /**
   * The excess g that explains a ratio of readings; what a gauge learns from its own plateau.
   *
   * @param ratio reading over true pressure
   * @param vaporShare x_w at that time, above 0
   */
  public static double learnedExcess(double ratio, double vaporShare) {
    if (!(vaporShare > 0 && vaporShare <= 1)) {
      throw new IllegalArgumentException(
          "a vapor share of " + vaporShare + " teaches nothing about a gauge");
    }
    return (ratio - 1) / vaporShare;
  }

  /**
   * 1 + g by kinetic theory, for comparison only: free molecules, equal accommodation.
   *
   * @param vaporRatio γ of water vapor, above 1
   * @param gasRatio γ of the calibration gas, above 1
   * @param gasMolarMass of the calibration gas, kg/mol
   */
  public static double kineticRatio(double vaporRatio, double gasRatio, double gasMolarMass) {
    double vapor = (vaporRatio + 1) / (vaporRatio - 1) / Math.sqrt(Water.MOLAR_MASS);
    double gas = (gasRatio + 1) / (gasRatio - 1) / Math.sqrt(gasMolarMass);
    return vapor / gas;
  }
}
