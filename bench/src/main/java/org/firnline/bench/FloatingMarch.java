package org.firnline.bench;

import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.matter.Water;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The baseline for a load too large for its dryer: dt/dℓ = μ/ṁ(ℓ, P) with P where load and duct
 * meet, by the integrator and the bracketing solver of Hipparchus. Knows that they meet once, above
 * the set point.
 */
final class FloatingMarch implements OrdinaryDifferentialEquation {
  private static final double SMALLEST_STEP_M = 1e-12;
  private static final int MOST_EVALUATIONS = 200;
  private static final double PRESSURE_ACCURACY_PA = 1e-9;

  private final QuasiSteadyFront front = new QuasiSteadyFront();
  private final OverloadedDryer.Overload overload;
  private final double tolerance;

  FloatingMarch(OverloadedDryer.Overload overload, double tolerance) {
    this.overload = overload;
    this.tolerance = tolerance;
  }

  /** Time until the ice is gone, s. */
  double dryingTime() {
    double thickness = overload.group().vessel().geometry().thickness();
    var integrator =
        new DormandPrince853Integrator(SMALLEST_STEP_M, thickness, tolerance, tolerance);
    return integrator.integrate(this, new ODEState(0, new double[] {0}), thickness)
        .getPrimaryState()[0];
  }

  @Override
  public int getDimension() {
    return 1;
  }

  @Override
  public double[] computeDerivatives(double depth, double[] time) {
    VesselGroup group = overload.group();
    double pressure =
        new BracketingNthOrderBrentSolver(0, PRESSURE_ACCURACY_PA, 0, 5)
            .solve(
                MOST_EVALUATIONS,
                at -> group.count() * rate(at, depth) - overload.path().rate(at),
                OverloadedDryer.SET_POINT_PA,
                Water.TRIPLE_POINT_PRESSURE - 1);
    return new double[] {group.vessel().geometry().icePerDepth(depth) / rate(pressure, depth)};
  }

  private double rate(double pressure_Pa, double depth) {
    HeatSupply supply = overload.group().heat().at(overload.shelf_K(), pressure_Pa);
    return front.at(overload.group().vessel(), supply, pressure_Pa, depth).rate();
  }
}
