package org.firnline.drying.primary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.firnline.matter.Water;
import org.firnline.numerics.GaussLegendre;
import org.firnline.numerics.Peak;
import org.firnline.numerics.Threshold;

/**
 * Primary drying of one vessel at constant shelf temperature and chamber pressure.
 *
 * <p>With constant settings the rate depends on the dried depth alone, so time is a quadrature,
 * t(ℓ) = ∫ μ dℓ/ṁ(ℓ), and no step in time is taken.
 *
 * <p>Assumes and leaves out what {@link QuasiSteadyFront} does.
 *
 * <p>Source: Pikal, J. Parenter. Sci. Technol. 39, 115 (1985) (from memory); derivation in
 * docs/science.md.
 */
public final class PrimaryDrying {

  private static final double TIME_ACCURACY = 1e-12;

  /** Depths at which melting is looked for; it is then located to the resolution of a double. */
  private static final int MELTING_SCAN = 64;

  private final QuasiSteadyFront front;

  /** With the equations of reference for ice. */
  public PrimaryDrying() {
    this(new QuasiSteadyFront());
  }

  public PrimaryDrying(QuasiSteadyFront front) {
    this.front = front;
  }

  /**
   * Runs until the ice is gone or drying stops.
   *
   * @param pressure_Pa chamber pressure, positive
   */
  public PrimaryDryingResult run(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {
    double thickness = vessel.geometry().thickness();
    if (pressure_Pa > Water.TRIPLE_POINT_PRESSURE) {
      return ended(vessel, new Outcome.AboveTriplePoint());
    }
    if (front.idles(vessel, supply, pressure_Pa, 0)) {
      double settled = front.at(vessel, supply, pressure_Pa, 0).frontTemperature();
      return ended(vessel, new Outcome.NothingSublimes(settled));
    }
    double reach =
        front.idles(vessel, supply, pressure_Pa, thickness)
            ? Threshold.of(depth -> front.idles(vessel, supply, pressure_Pa, depth), 0, thickness)
            : thickness;
    Optional<Double> melting = meltingDepth(vessel, supply, pressure_Pa, reach);
    if (melting.isPresent()) {
      double depth = melting.get();
      double time = time(vessel, supply, pressure_Pa, 0, depth);
      return followed(vessel, supply, pressure_Pa, depth, new Outcome.Melts(depth, time));
    }
    if (reach < thickness) {
      return followed(vessel, supply, pressure_Pa, reach, new Outcome.Stalls(reach));
    }
    double half = vessel.geometry().depthAtDriedFraction(0.5);
    double halfTime = time(vessel, supply, pressure_Pa, 0, half);
    double rest = time(vessel, supply, pressure_Pa, half, thickness);
    return followed(
        vessel, supply, pressure_Pa, thickness, new Outcome.Dries(halfTime + rest, halfTime));
  }

  /**
   * States at evenly spaced depths from 0 to {@code depth_m}, each with the time at which it is
   * reached. Only for depths that are reached.
   *
   * @param points number of states; 2 or more
   */
  public List<TimedState> path(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m, int points) {
    List<TimedState> path = new ArrayList<>(points);
    double time = 0;
    for (int point = 0; point < points; point++) {
      double depth = depth_m * point / (points - 1);
      if (point > 0) {
        double previous = depth_m * (point - 1) / (points - 1);
        time += time(vessel, supply, pressure_Pa, previous, depth);
      }
      path.add(new TimedState(time, front.at(vessel, supply, pressure_Pa, depth)));
    }
    return List.copyOf(path);
  }

  private double time(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double from_m, double to_m) {
    return GaussLegendre.integrate(
        depth ->
            vessel.geometry().icePerDepth(depth)
                / front.at(vessel, supply, pressure_Pa, depth).rate(),
        from_m,
        to_m,
        TIME_ACCURACY);
  }

  private Optional<Double> meltingDepth(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double reach) {
    double frozenUntil = 0;
    for (int sample = 0; sample <= MELTING_SCAN; sample++) {
      double depth = reach * sample / MELTING_SCAN;
      if (isMelting(vessel, supply, pressure_Pa, depth)) {
        return Optional.of(
            sample == 0
                ? 0.0
                : Threshold.of(
                    candidate -> isMelting(vessel, supply, pressure_Pa, candidate),
                    frozenUntil,
                    depth));
      }
      frozenUntil = depth;
    }
    return Optional.empty();
  }

  private boolean isMelting(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m) {
    return front.melts(vessel, supply, pressure_Pa, depth_m)
        || front.at(vessel, supply, pressure_Pa, depth_m).warmest() > QuasiSteadyFront.WARMEST_ICE;
  }

  private static PrimaryDryingResult ended(DryingVessel vessel, Outcome outcome) {
    return new PrimaryDryingResult(
        outcome, vessel.geometry().iceMass(), vessel.geometry().thickness(), Optional.empty());
  }

  private PrimaryDryingResult followed(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double reach, Outcome outcome) {
    var course =
        new PrimaryDryingResult.Course(
            front.at(vessel, supply, pressure_Pa, 0),
            front.at(vessel, supply, pressure_Pa, reach),
            greatest(vessel, supply, pressure_Pa, reach, FrontState::frontTemperature),
            greatest(vessel, supply, pressure_Pa, reach, FrontState::warmest),
            greatest(vessel, supply, pressure_Pa, reach, FrontState::rate));
    return new PrimaryDryingResult(
        outcome, vessel.geometry().iceMass(), vessel.geometry().thickness(), Optional.of(course));
  }

  private double greatest(
      DryingVessel vessel,
      HeatSupply supply,
      double pressure_Pa,
      double reach,
      ToDoubleFunction<FrontState> quantity) {
    return Peak.of(
        depth -> quantity.applyAsDouble(front.at(vessel, supply, pressure_Pa, depth)), 0, reach);
  }
}
