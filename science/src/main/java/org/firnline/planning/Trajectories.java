package org.firnline.planning;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FrontState;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.matter.Water;
import org.firnline.numerics.QuadratureRule;

/**
 * Many trajectories at constant settings, quickly: one quadrature of fixed order instead of the
 * adaptive one of {@link org.firnline.drying.primary.PrimaryDrying}, which is its test oracle.
 */
final class Trajectories {

  /** Ten points meet the adaptive answer to 1e-6 for every vial and recipe in use. */
  private static final QuadratureRule RULE = QuadratureRule.gaussLegendre(10);

  private final QuasiSteadyFront front = new QuasiSteadyFront();

  Trajectory of(VialCase vial, Hold hold) {
    if (!hold.belowTriplePoint()) {
      return new Trajectory(
          Trajectory.Outcome.MELTS, Double.POSITIVE_INFINITY, Water.TRIPLE_POINT_TEMPERATURE, 0);
    }
    DryingVessel vessel = vial.vessel();
    HeatSupply supply = vial.supply(hold);
    if (front.idles(vessel, supply, hold.pressure_Pa(), 0)) {
      return new Trajectory(
          Trajectory.Outcome.NOTHING_SUBLIMES, Double.POSITIVE_INFINITY, hold.shelf_K(), 0);
    }
    return follow(vessel, supply, hold.pressure_Pa());
  }

  private Trajectory follow(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {
    double thickness = vessel.geometry().thickness();
    FrontState start = front.at(vessel, supply, pressure_Pa, 0);
    FrontState end = front.at(vessel, supply, pressure_Pa, thickness);
    double warmest = Math.max(start.warmest(), end.warmest());
    double peak = Math.max(start.rate(), end.rate());
    double time = 0;
    for (int i = 0; i < RULE.size(); i++) {
      double depth = RULE.point(i, 0, thickness);
      FrontState state = front.at(vessel, supply, pressure_Pa, depth);
      warmest = Math.max(warmest, state.warmest());
      peak = Math.max(peak, state.rate());
      time += RULE.weight(i, 0, thickness) * vessel.geometry().icePerDepth(depth) / state.rate();
    }
    boolean melts = warmest >= Water.TRIPLE_POINT_TEMPERATURE;
    return new Trajectory(
        melts ? Trajectory.Outcome.MELTS : Trajectory.Outcome.DRIES,
        melts ? Double.POSITIVE_INFINITY : time,
        warmest,
        peak);
  }
}
