package org.firnline.drying.load;

import java.util.List;
import java.util.Optional;
import org.firnline.lab.Dryer;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Shelves;

/**
 * From a load as a person describes it to the groups of equal vessels that dry: every kind of
 * vessel becomes a shape, a cake and a source of heat, at the best values known. Vessels at an edge
 * of the shelf become a group of their own where somebody knows what the walls give them.
 */
public final class ResolvedLoad {

  private ResolvedLoad() {}

  /**
   * The groups of {@code load} on {@code dryer}.
   *
   * @param room_K temperature of the room, which warms flasks
   */
  public static DryingLoad of(Load load, Dryer dryer, double room_K) {
    Optional<EdgeHeat> edge = dryer.shelves().flatMap(Shelves::edge);
    return new DryingLoad(
        load.portions().stream()
            .flatMap(portion -> groups(portion.item(), edge, room_K).stream())
            .toList());
  }

  /** The groups of one item; {@code edge} is what the walls of the dryer give. */
  public static List<VesselGroup> groups(LoadItem item, Optional<EdgeHeat> edge, double room_K) {
    return item.vessel().fold(new VesselGroups(item, edge, room_K));
  }
}
