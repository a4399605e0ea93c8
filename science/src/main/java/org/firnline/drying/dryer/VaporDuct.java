package org.firnline.drying.dryer;

import org.firnline.lab.Capability;
import org.firnline.matter.Water;

/**
 * Vapor through the duct between chamber and collector: choked while the chamber pressure is more
 * than about 1.85 times the collector pressure, subsonic and isentropic closer to it.
 *
 * <p>Assumes and leaves out what {@link IsentropicFlow} does; pure water vapor as an ideal gas.
 *
 * @param area cross-section A_d, m2; positive
 * @param dischargeCoefficient C_d, above 0
 * @param vaporTemperature of the vapor at rest before the duct, K; positive
 * @param heatCapacityRatio γ, above 1
 * @param collectorPressure behind the duct, Pa; 0 or more
 */
public record VaporDuct(
    double area,
    double dischargeCoefficient,
    double vaporTemperature,
    double heatCapacityRatio,
    double collectorPressure)
    implements VaporLimit {

  public VaporDuct {
    requirePositive(area, "duct area");
    requirePositive(dischargeCoefficient, "discharge coefficient");
    requirePositive(vaporTemperature, "vapor temperature");
    if (!(collectorPressure >= 0)) {
      throw new IllegalArgumentException(
          "collector pressure " + collectorPressure + " is negative");
    }
  }

  /** The duct of a dryer whose collector keeps {@code collectorPressure_Pa}. */
  public static VaporDuct of(Capability.Duct duct, double collectorPressure_Pa) {
    return new VaporDuct(
        duct.area(),
        duct.dischargeCoefficient(),
        duct.vaporTemperature(),
        Water.VAPOR_HEAT_CAPACITY_RATIO,
        collectorPressure_Pa);
  }

  @Override
  public Part part() {
    return Part.DUCT;
  }

  @Override
  public double rate(double pressure_Pa) {
    return rate(pressure_Pa, collectorPressure);
  }

  /** The flow against another pressure behind the duct, kg/s. */
  double rate(double pressure_Pa, double behind_Pa) {
    return dischargeCoefficient * area * flow().massFlux(pressure_Pa, behind_Pa, vaporTemperature);
  }

  /** Whether {@code pressure_Pa} is so near the collector's that the flow is no longer choked. */
  public boolean isSubsonic(double pressure_Pa) {
    return collectorPressure > flow().criticalRatio() * pressure_Pa;
  }

  private IsentropicFlow flow() {
    return new IsentropicFlow(heatCapacityRatio, Water.VAPOR_GAS_CONSTANT);
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " " + value + " is not positive");
    }
  }
}
