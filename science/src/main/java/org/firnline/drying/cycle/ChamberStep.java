package org.firnline.drying.cycle;

import org.firnline.drying.primary.IceTable;
import org.firnline.matter.Water;

/**
 * The chamber pressure during a step: the greatest of the set point (where the dryer can hold one),
 * the gas that is not yet pumped away, the vapor pressure of the collector's ice and the pressure
 * at which the dryer carries the load's vapor.
 *
 * <p>The load answers to pressure along its tangent at the pressure of the step before, which the
 * fronts give; the meeting point is found on it by halving. With the product temperature of the
 * moment there is one such point; that a load can settle at several pressures shows in which of
 * them its temperature leads to. The chamber's own vapor content is seconds of vapor and left out.
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
  private boolean bleeds;

  ChamberStep(CycleDryer machine, DryerState dryer) {
    this.machine = machine;
    this.dryer = dryer;
  }

  /**
   * The pressure at {@code time_s} if the load gave off nothing, Pa.
   *
   * @param iced whether there is ice on the collector
   */
  double lowest(double time_s, boolean iced) {
    double set = dryer.isControlled(time_s) ? dryer.pressureSetPoint(time_s) : 0;
    double gas = Math.max(dryer.gas(), iced ? behind() : 0);
    bleeds = set > gas;
    return Math.max(LEAST_PA, Math.max(set, gas));
  }

  /** Where the load is looked at: where the chamber was, but not below {@code lowest_Pa}. */
  double from(double lowest_Pa) {
    boolean wasFloating = carried > lowest_Pa && carried < Water.TRIPLE_POINT_PRESSURE;
    return wasFloating ? carried : lowest_Pa;
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
  double meet(double lowest_Pa, double from_Pa, double rate, double slope) {
    pressure = lowest_Pa;
    if (rate + slope * (lowest_Pa - from_Pa) > capability(lowest_Pa)) {
      double low = lowest_Pa;
      double high = Water.TRIPLE_POINT_PRESSURE;
      for (int halving = 0; halving < HALVINGS; halving++) {
        double middle = (low + high) / 2;
        boolean tooMuch = rate + slope * (middle - from_Pa) > capability(middle);
        low = tooMuch ? middle : low;
        high = tooMuch ? high : middle;
      }
      pressure = high;
      bleeds = false;
    }
    carried = pressure;
    return pressure;
  }

  /** What duct and collector carry now; nothing below the vapor pressure of the collector's ice. */
  private double capability(double pressure_Pa) {
    return machine.path().rate(pressure_Pa, behind());
  }

  private double behind() {
    return ICE.pressure(Math.min(dryer.collector(), Water.TRIPLE_POINT_TEMPERATURE));
  }

  double pressure() {
    return pressure;
  }

  /** Pressure at which the dryer last carried the load, Pa. */
  double carried() {
    return carried;
  }

  /**
   * Share of vapor among what flows to the collector and the pump, 0 to 1. Where the pressure
   * control lets gas in, the pump takes its volume of it; where the load alone keeps the pressure
   * up, only what leaks in.
   */
  double vaporShare(double rate, double time_s) {
    if (rate <= 0) {
      return 0;
    }
    double vapor = rate / Water.MOLAR_MASS;
    double flow = machine.pumpingSpeed() * (bleeds ? pressure : dryer.gas());
    double gas =
        Math.max(flow, dryer.inflow(time_s)) / (Water.GAS_CONSTANT * machine.surroundings().room());
    return vapor / (vapor + gas);
  }
}
