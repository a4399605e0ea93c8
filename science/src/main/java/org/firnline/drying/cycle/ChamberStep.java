package org.firnline.drying.cycle;

import org.firnline.drying.primary.IceTable;
import org.firnline.matter.Water;

/**
 * The chamber pressure during a step: the greatest of the set point, the gas that is not yet pumped
 * away, and the pressure at which the dryer carries the load's vapor.
 *
 * <p>The load answers to pressure along its tangent, which the fronts give; the meeting point is
 * found on it by halving. The chamber's own vapor content is seconds of vapor and left out.
 */
final class ChamberStep {

  /** Lowest pressure looked at, Pa. */
  static final double LEAST_PA = 1e-3;

  private static final int HALVINGS = 48;

  private static final IceTable ICE = IceTable.shared();

  private final CycleDryer machine;
  private final DryerState dryer;
  private double pressure = DryerState.ATMOSPHERE_PA;
  private double carried;

  ChamberStep(CycleDryer machine, DryerState dryer) {
    this.machine = machine;
    this.dryer = dryer;
  }

  /** The pressure at {@code time_s} if the load gave off nothing, Pa. */
  double lowest(double time_s) {
    double set = dryer.isControlled(time_s) ? dryer.pressureSetPoint(time_s) : 0;
    return Math.max(LEAST_PA, Math.max(set, dryer.gas()));
  }

  void takeOver(double pressure_Pa) {
    pressure = pressure_Pa;
    carried = 0;
  }

  /**
   * The pressure at which a load with this rate and slope at {@code from_Pa} meets the dryer, Pa.
   *
   * @param rate kg/s at {@code from_Pa}
   * @param slope change of the rate with pressure, kg/(s Pa); 0 or less
   */
  double meet(double from_Pa, double rate, double slope, double time_s) {
    pressure = from_Pa;
    carried = from_Pa;
    if (rate > capability(from_Pa)) {
      double low = from_Pa;
      double high = Water.TRIPLE_POINT_PRESSURE;
      for (int halving = 0; halving < HALVINGS; halving++) {
        double middle = (low + high) / 2;
        boolean tooMuch = rate + slope * (middle - from_Pa) > capability(middle);
        low = tooMuch ? middle : low;
        high = tooMuch ? high : middle;
      }
      pressure = high;
      carried = high;
    }
    return pressure;
  }

  /** What duct and collector carry now; nothing below the vapor pressure of the collector's ice. */
  private double capability(double pressure_Pa) {
    double collector = Math.min(dryer.collector(), Water.TRIPLE_POINT_TEMPERATURE);
    boolean above = pressure_Pa > ICE.pressure(collector);
    return above ? machine.path().rate(pressure_Pa) : 0;
  }

  double pressure() {
    return pressure;
  }

  /** Pressure at which the dryer last carried the load, Pa. */
  double carried() {
    return carried;
  }

  /** Share of vapor among what flows to the collector and the pump, 0 to 1. */
  double vaporShare(double rate, double time_s) {
    if (rate <= 0) {
      return 0;
    }
    double vapor = rate / Water.MOLAR_MASS;
    double gas =
        Math.max(pressure * machine.pumpingSpeed(), dryer.inflow(time_s))
            / (Water.GAS_CONSTANT * machine.surroundings().room());
    return vapor / (vapor + gas);
  }
}
