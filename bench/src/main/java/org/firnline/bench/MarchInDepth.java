package org.firnline.bench;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The baseline for drying at constant settings: the Dormand–Prince 8(5,3) integrator of Hipparchus
 * on dt/dℓ = μ/ṁ(ℓ), with Firnline's own front balance on the right-hand side.
 *
 * <p>It marches in depth, not in time, which is the kindest way to use it: it then need not search
 * for the end, and it is asked for the time only.
 */
public final class MarchInDepth {
  private static final double SMALLEST_STEP_M = 1e-12;

  private final QuasiSteadyFront front = new QuasiSteadyFront();
  private final double tolerance;

  /**
   * A march with the given local tolerance.
   *
   * @param tolerance relative to the time marched so far, and in seconds
   */
  public MarchInDepth(double tolerance) {
    this.tolerance = tolerance;
  }

  /** Time until the ice is gone, s. */
  public double dryingTime(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {
    double thickness = vessel.geometry().thickness();
    var integrator =
        new DormandPrince853Integrator(SMALLEST_STEP_M, thickness, tolerance, tolerance);
    var equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 1;
          }

          @Override
          public double[] computeDerivatives(double depth, double[] time) {
            double rate = front.at(vessel, supply, pressure_Pa, depth).rate();
            return new double[] {vessel.geometry().icePerDepth(depth) / rate};
          }
        };
    return integrator.integrate(equation, new ODEState(0, new double[] {0}), thickness)
        .getPrimaryState()[0];
  }
}
