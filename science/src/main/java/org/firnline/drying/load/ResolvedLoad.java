package org.firnline.drying.load;

import java.util.List;
import java.util.Optional;
import org.firnline.lab.Dryer;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Portion;
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
            .map(Portion::item)
            .flatMap(
                item ->
                    edge
                        .map(walls -> groups(item, walls, room_K))
                        .orElseGet(() -> groups(item, room_K))
                        .stream())
            .toList());
  }

  /** The groups of one item on a dryer whose walls nobody knows. */
  public static List<VesselGroup> groups(LoadItem item, double room_K) {
    return item.vessel().fold(new VesselGroups(item, Optional.empty(), room_K));
  }

  /** The groups of one item; {@code edge} is what the walls of the dryer give. */
  public static List<VesselGroup> groups(LoadItem item, EdgeHeat edge, double room_K) {
    return item.vessel().fold(new VesselGroups(item, Optional.of(edge), room_K));
  }
}
