package org.firnline.drying.load;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;

/**
 * Equal vessels that get equal heat.
 *
 * @param count how many; positive
 * @param vessel one of them
 * @param heat around each
 */
public record VesselGroup(double count, DryingVessel vessel, HeatSource heat) {

  public VesselGroup {
    if (!(count > 0)) {
      throw new IllegalArgumentException("count " + count + " of a vessel group is not positive");
    }
  }

  /** Ice in all of them at the start, kg. */
  public double ice() {
    return count * vessel.geometry().iceMass();
  }
}
