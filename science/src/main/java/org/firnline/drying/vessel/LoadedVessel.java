package org.firnline.drying.vessel;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;
import org.firnline.lab.LoadItem;

/**
 * One vessel of a load, ready for primary drying.
 *
 * @param vessel shape of its ice, its cake and its mouth; for a piece one of its two halves
 * @param heat where its heat comes from
 * @param parts how many such parts one vessel has: 2 for a piece that dries from both faces, else 1
 */
public record LoadedVessel(DryingVessel vessel, HeatSource heat, int parts) {

  /** A typical vessel of {@code item}: best values, no spread. */
  public static LoadedVessel of(LoadItem item, Surroundings surroundings) {
    return item.vessel().fold(new VesselShapes(item, surroundings));
  }
}
