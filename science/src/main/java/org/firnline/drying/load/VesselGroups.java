package org.firnline.drying.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.vessel.LoadedVessel;
import org.firnline.drying.vessel.Surroundings;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Flask;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Piece;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.firnline.lab.Vial;

/**
 * What dries, for each kind of vessel.
 *
 * @param item the vessels
 * @param edge what the walls of the dryer give to vials beside them
 * @param room_K temperature of the room
 */
record VesselGroups(LoadItem item, Optional<EdgeHeat> edge, double room_K)
    implements Vessel.Cases<List<VesselGroup>> {

  @Override
  public List<VesselGroup> vial(Vial vial) {
    LoadedVessel amidst = LoadedVessel.of(item, new Surroundings(room_K, OptionalDouble.empty()));
    HeatTransfer transfer = vial.heatTransfer().times(vial.heatTransferFactor().best());
    int atEdge = edge.isPresent() ? (int) Math.round(item.edgeShare() * item.count()) : 0;
    List<VesselGroup> groups = new ArrayList<>();
    addIfAny(groups, item.count() - atEdge, amidst.vessel(), amidst.heat());
    edge.ifPresent(heat -> addIfAny(groups, atEdge, amidst.vessel(), beside(heat, transfer)));
    return List.copyOf(groups);
  }

  /**
   * A ratio is read as a coefficient to the shelf that does not depend on pressure, so that the
   * ratio holds at the pressure of its measurement and falls above it.
   */
  private static ShelfHeat beside(EdgeHeat edge, HeatTransfer center) {
    if (edge instanceof EdgeHeat.Side side) {
      var wall = new ShelfHeat.Wall(side.coefficient().best(), side.wallTemperature());
      return new ShelfHeat(center, wall, ShelfHeat.Above.NONE);
    }
    EdgeHeat.Ratio ratio = (EdgeHeat.Ratio) edge;
    double extra = (ratio.ratio().best() - 1) * center.at(ratio.pressure());
    return ShelfHeat.of(
        new HeatTransfer(center.contact() + extra, center.gas(), center.leveling()));
  }

  @Override
  public List<VesselGroup> tray(Tray tray) {
    return asLoaded();
  }

  @Override
  public List<VesselGroup> flask(Flask flask) {
    return asLoaded();
  }

  @Override
  public List<VesselGroup> piece(Piece piece) {
    return asLoaded();
  }

  /** One group of the shape and heat that {@link LoadedVessel} gives; pieces as their halves. */
  private List<VesselGroup> asLoaded() {
    LoadedVessel loaded = LoadedVessel.of(item, new Surroundings(room_K, OptionalDouble.empty()));
    return List.of(
        new VesselGroup((double) loaded.parts() * item.count(), loaded.vessel(), loaded.heat()));
  }

  private static void addIfAny(
      List<VesselGroup> groups, int count, DryingVessel vessel, HeatSource heat) {
    if (count > 0) {
      groups.add(new VesselGroup(count, vessel, heat));
    }
  }
}
