package org.firnline.drying.dryer;

/**
 * Greatest mass flow of an ideal gas through a duct from a reservoir at rest.
 *
 * <p>Assumes isentropic one-dimensional flow; friction, turns and valves are left to a discharge
 * coefficient outside. Vapor in a chamber at a few pascals is thin, so this is an upper bound.
 *
 * <p>Valid: heat-capacity ratio above 1; a duct much wider than the mean free path.
 *
 * <p>Source: choked form as printed by NASA Glenn Research Center, "Mass Flow Choking"; subsonic
 * form in any gas-dynamics text, for instance Shapiro, The Dynamics and Thermodynamics of
 * Compressible Fluid Flow, vol. 1 (1953), chapter 4 (from memory).
 *
 * @param heatCapacityRatio γ, above 1
 * @param gasConstant specific gas constant, J/(kg K); positive
 */
record IsentropicFlow(double heatCapacityRatio, double gasConstant) {

  IsentropicFlow {
    if (!(heatCapacityRatio > 1)) {
      throw new IllegalArgumentException(
          "heat-capacity ratio " + heatCapacityRatio + " is not above 1");
    }
    if (!(gasConstant > 0)) {
      throw new IllegalArgumentException("gas constant " + gasConstant + " is not positive");
    }
  }

  /** Ratio of throat to reservoir pressure at which the flow chokes, p* / p0. */
  double criticalRatio() {
    double gamma = heatCapacityRatio;
    return Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
  }

  /** Dimensionless choked flow, ṁ sqrt(R T0) / (A p0). */
  double chokedFunction() {
    double gamma = heatCapacityRatio;
    return Math.sqrt(gamma) * Math.pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
  }

  /**
   * Dimensionless flow into a space at {@code ratio} of the reservoir pressure; choked below {@link
   * #criticalRatio()}, 0 at 1 and above.
   */
  double function(double ratio) {
    if (ratio >= 1) {
      return 0;
    }
    if (ratio <= criticalRatio()) {
      return chokedFunction();
    }
    double gamma = heatCapacityRatio;
    double expansion = Math.pow(ratio, 2 / gamma) - Math.pow(ratio, (gamma + 1) / gamma);
    return Math.sqrt(2 * gamma / (gamma - 1) * Math.max(0, expansion));
  }

  /**
   * Mass flow per area, kg/(m2 s).
   *
   * @param reservoir_Pa pressure before the duct, positive
   * @param behind_Pa pressure behind it, 0 or more
   * @param temperature_K of the gas at rest, positive
   */
  double massFlux(double reservoir_Pa, double behind_Pa, double temperature_K) {
    return reservoir_Pa
        * function(behind_Pa / reservoir_Pa)
        / Math.sqrt(gasConstant * temperature_K);
  }
}
