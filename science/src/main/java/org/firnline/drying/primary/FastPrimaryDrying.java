package org.firnline.drying.primary;

import java.util.Optional;

/**
 * Primary drying of one vessel at constant settings, fast enough to ask for every vessel of a load
 * and every point of a map.
 *
 * <p>Slabs without heat from above go through {@link SlabKernel}; other shapes through {@link
 * PrimaryDrying} with the tabulated ice. Both solve the same equations; drying times agree with
 * {@link PrimaryDrying} to 1e-6 and temperatures to 1e-4 K wherever the source is more than a few
 * hundredths of a kelvin above the threshold of sublimation.
 */
public final class FastPrimaryDrying {

  private static final PrimaryDrying TABULATED =
      new PrimaryDrying(new QuasiSteadyFront(IceTable.shared(), IceTable.shared()));

  private FastPrimaryDrying() {}

  /**
   * Runs until the ice is gone or drying stops.
   *
   * @param pressure_Pa chamber pressure, positive
   */
  public static VialTrajectory run(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {
    if (vessel.geometry() instanceof Slab slab && supply.above().coefficient() == 0) {
      return SlabKernel.run(vessel, slab, supply, pressure_Pa);
    }
    return summary(TABULATED.run(vessel, supply, pressure_Pa));
  }

  private static VialTrajectory summary(PrimaryDryingResult result) {
    Outcome outcome = result.outcome();
    if (outcome instanceof Outcome.NothingSublimes idle) {
      return VialTrajectory.idle(idle.productTemperature());
    }
    Optional<PrimaryDryingResult.Course> course = result.course();
    boolean melts = outcome instanceof Outcome.Melts;
    if (melts || course.isEmpty()) {
      return VialTrajectory.melting(
          melts ? VialTrajectory.Ending.MELTS : VialTrajectory.Ending.ABOVE_TRIPLE_POINT);
    }
    return new VialTrajectory(
        outcome instanceof Outcome.Stalls
            ? VialTrajectory.Ending.STALLS
            : VialTrajectory.Ending.DRIES,
        result.dryingTime().orElse(Double.NaN),
        course.get().warmestPoint(),
        course.get().start().rate(),
        course.get().peakRate(),
        course.get().end().rate());
  }
}
