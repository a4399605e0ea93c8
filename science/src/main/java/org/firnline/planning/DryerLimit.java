package org.firnline.planning;

import org.firnline.lab.Capability;
import org.firnline.lab.Dryer;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;

/** What a dryer takes at a chamber pressure. */
final class DryerLimit {

  private static final double GAMMA = Water.VAPOR_HEAT_CAPACITY_RATIO;

  private final Dryer dryer;

  DryerLimit(Dryer dryer) {
    this.dryer = dryer;
  }

  /** The greatest vapor rate that duct and collector carry at {@code pressure_Pa}, kg/s. */
  double most(double pressure_Pa) {
    double route =
        dryer
            .capability()
            .fold(duct -> choked(duct, pressure_Pa), line -> along(line, pressure_Pa));
    return Math.min(route, dryer.collector().rate());
  }

  /** Vapor pressure of the ice on the collector, below which no chamber pressure can go, Pa. */
  double floor() {
    return new WagnerEtAl2011Ice().pressure(dryer.collector().temperature());
  }

  private static double choked(Capability.Duct duct, double pressure_Pa) {
    double critical = Math.pow(2 / (GAMMA + 1), (GAMMA + 1) / (2 * (GAMMA - 1)));
    return duct.dischargeCoefficient()
        * duct.area()
        * pressure_Pa
        * Math.sqrt(GAMMA / (Water.VAPOR_GAS_CONSTANT * duct.vaporTemperature()))
        * critical;
  }

  private static double along(Capability.Line line, double pressure_Pa) {
    return Math.max(0, line.slope() * (pressure_Pa - line.threshold()));
  }
}
