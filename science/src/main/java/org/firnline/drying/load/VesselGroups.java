package org.firnline.drying.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.primary.RoomHeat;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Shell;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Flask;
import org.firnline.lab.HeatFromAbove;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Piece;
import org.firnline.lab.Solution;
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

  /** A piece dries as two halves, back to back. */
  private static final int HALVES = 2;

  @Override
  public List<VesselGroup> vial(Vial vial) {
    Slab slab = Slab.of(solution(), item.fill(), vial.innerArea(), vial.outerArea());
    HeatTransfer transfer = vial.heatTransfer().times(vial.heatTransferFactor().best());
    int atEdge = edge.isPresent() ? (int) Math.round(item.edgeShare() * item.count()) : 0;
    List<VesselGroup> groups = new ArrayList<>();
    addIfAny(groups, item.count() - atEdge, slab, ShelfHeat.of(transfer));
    edge.ifPresent(heat -> addIfAny(groups, atEdge, slab, beside(heat, transfer)));
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
    HeatTransfer transfer = tray.heatTransfer().times(tray.heatTransferFactor().best());
    ShelfHeat.Above above =
        tray.above().<ShelfHeat.Above>map(VesselGroups::nextShelf).orElse(ShelfHeat.Above.NONE);
    Slab slab = Slab.of(solution(), item.fill(), tray.area(), tray.area());
    return List.of(
        group(item.count(), slab, 0, new ShelfHeat(transfer, ShelfHeat.Wall.NONE, above)));
  }

  private static ShelfHeat.Above nextShelf(HeatFromAbove heat) {
    return new ShelfHeat.Above.NextShelf(heat.coefficient().best(), heat.cakeConductivity());
  }

  @Override
  public List<VesselGroup> flask(Flask flask) {
    var glass = new Shell.Glass(flask.wallThickness(), flask.glassConductivity());
    double room = flask.roomHeatTransfer().best();
    double port = flask.portResistance().best();
    return flask
        .form()
        .fold(
            shell ->
                List.of(
                    group(
                        item.count(),
                        Shell.of(
                            solution(), item.fill(), shell.wallRadius(), shell.height(), glass),
                        port,
                        new RoomHeat(room, room_K))),
            puddle ->
                List.of(
                    group(
                        item.count(),
                        Slab.of(solution(), item.fill(), puddle.area(), puddle.area()),
                        port,
                        new RoomHeat(
                            1 / (1 / room + glass.thickness() / glass.conductivity()), room_K))));
  }

  @Override
  public List<VesselGroup> piece(Piece piece) {
    Slab half = Slab.of(solution(), item.fill() / HALVES, piece.faceArea(), piece.faceArea());
    var heat =
        new ShelfHeat(new HeatTransfer(0, 0, 0), ShelfHeat.Wall.NONE, nextShelf(piece.heat()));
    return List.of(group(HALVES * item.count(), half, 0, heat));
  }

  private void addIfAny(
      List<VesselGroup> groups, int count, FrontGeometry geometry, HeatSource heat) {
    if (count > 0) {
      groups.add(group(count, geometry, 0, heat));
    }
  }

  private VesselGroup group(double count, FrontGeometry geometry, double mouth, HeatSource heat) {
    CakeResistance cake =
        item.product().resistance().times(item.product().resistanceFactor().best());
    return new VesselGroup(count, new DryingVessel(geometry, cake, mouth), heat);
  }

  private Solution solution() {
    return item.product().solution();
  }
}
