package org.firnline.planning.forecast;

import org.firnline.drying.load.VesselGroup;

/**
 * Equal vessels of one item at one kind of place, with the way to their last and their warmest.
 *
 * @param item number of the item in the load
 * @param group the vessels at the best values
 * @param members how many vessels the extremes are looked for in; 1 or more
 * @param last towards the vessel that dries last
 * @param warmest towards the vessel that gets warmest
 */
record Place(int item, VesselGroup group, int members, Lean last, Lean warmest) {}
