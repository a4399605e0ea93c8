package org.firnline.bench;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.lab.HeatTransfer;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The baseline for a vial that stores heat under a shelf ramp: the Dormand–Prince 8(5,3) integrator
 * of Hipparchus in time with its own search for the last ice, on Firnline's reference front
 * balance. One leg for the ramp and one for the hold, since it must not step over the bend.
 */
final class MarchInTime implements OrdinaryDifferentialEquation {
  private static final double SMALLEST_STEP_S = 1e-9;
  private static final double LONGEST_STEP_S = 7_200;
  private static final double LONGEST_RUN_S = 1e7;

  private final QuasiSteadyFront front = new QuasiSteadyFront();
  private final MurphyKoop2005Enthalpy enthalpy = new MurphyKoop2005Enthalpy();
  private final Vial vial;
  private final double tolerance;

  /**
   * A vial and its settings.
   *
   * @param vessel the vial
   * @param heat from the shelf
   * @param mass that stores heat
   * @param start_K of shelf and product
   * @param shelf_K at the end of the ramp
   * @param ramp_K_per_s of the shelf
   * @param pressure_Pa chamber pressure
   */
  record Vial(
      DryingVessel vessel,
      HeatTransfer heat,
      ThermalMass mass,
      double start_K,
      double shelf_K,
      double ramp_K_per_s,
      double pressure_Pa) {

    double rampTime() {
      return (shelf_K - start_K) / ramp_K_per_s;
    }
  }

  MarchInTime(Vial vial, double tolerance) {
    this.vial = vial;
    this.tolerance = tolerance;
  }

  /** Time until the ice is gone, s. */
  double dryingTime() {
    var integrator =
        new DormandPrince853Integrator(SMALLEST_STEP_S, LONGEST_STEP_S, tolerance, tolerance);
    integrator.addEventDetector(new LastIce());
    var ramp = integrator.integrate(this, new ODEState(0, start()), vial.rampTime());
    return integrator.integrate(this, ramp, LONGEST_RUN_S).getTime();
  }

  /** Depth in thicknesses, so that one tolerance fits both components; temperature in K. */
  private double[] start() {
    return new double[] {0, vial.start_K()};
  }

  @Override
  public int getDimension() {
    return 2;
  }

  @Override
  public double[] computeDerivatives(double time, double[] state) {
    double depth = Math.min(1, state[0]) * thickness();
    double bottom = state[1];
    var balance =
        front.at(
            vial.vessel(),
            new HeatSupply(Double.POSITIVE_INFINITY, bottom, HeatSupply.Above.NONE),
            vial.pressure_Pa(),
            depth);
    double shelf = Math.min(vial.shelf_K(), vial.start_K() + vial.ramp_K_per_s() * time);
    double conductance =
        vial.vessel().geometry().outerConductance(vial.heat().at(vial.pressure_Pa()), thickness());
    double capacity = vial.mass().vessel() + vial.mass().frozen() * (1 - Math.min(1, state[0]));
    double taken = enthalpy.specific(balance.frontTemperature()) * balance.rate();
    double speed = balance.rate() / vial.vessel().geometry().icePerDepth(depth);
    return new double[] {speed / thickness(), (conductance * (shelf - bottom) - taken) / capacity};
  }

  private double thickness() {
    return vial.vessel().geometry().thickness();
  }
}
