package org.firnline.drying.primary;

/**
 * Primary drying of one vessel at constant settings, fast enough to ask for every vessel of a load
 * and every point of a map.
 *
 * <p>Slabs without heat from above go through {@link SlabKernel}, the rest through {@link
 * ShapeKernel}. Both solve the equations of {@link PrimaryDrying}; drying times agree with it to
 * 1e-6 and temperatures to 1e-4 K wherever the source is more than half a kelvin above the
 * threshold of sublimation, closer to it by as much less as the tabulated ice is amplified there.
 */
public final class FastPrimaryDrying {

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
    return ShapeKernel.run(vessel, supply, pressure_Pa);
  }
}
