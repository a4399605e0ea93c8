package org.firnline.drying.vessel;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.RoomHeat;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Shell;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
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
 * The shape and the heat of each kind of vessel (docs/science.md, sections 2 and 3).
 *
 * @param item what is loaded
 * @param surroundings room and surfaces
 */
record VesselShapes(LoadItem item, Surroundings surroundings)
    implements Vessel.Cases<LoadedVessel> {

  private static final HeatTransfer NOTHING_BELOW = new HeatTransfer(0, 0, 0);

  @Override
  public LoadedVessel vial(Vial vial) {
    Slab slab = Slab.of(solution(), item.fill(), vial.innerArea(), vial.outerArea());
    HeatTransfer heat = vial.heatTransfer().times(vial.heatTransferFactor().best());
    return whole(slab, ShelfHeat.of(heat), 0);
  }

  @Override
  public LoadedVessel tray(Tray tray) {
    Slab slab = Slab.of(solution(), item.fill(), tray.area(), tray.area());
    HeatTransfer heat = tray.heatTransfer().times(tray.heatTransferFactor().best());
    ShelfHeat.Above above = tray.above().map(this::above).orElse(ShelfHeat.Above.NONE);
    return whole(slab, new ShelfHeat(heat, ShelfHeat.Wall.NONE, above), 0);
  }

  @Override
  public LoadedVessel flask(Flask flask) {
    return flask.form().fold(shell -> shell(flask, shell), puddle -> puddle(flask, puddle));
  }

  /** Nothing crosses the mid-plane: half of the piece, heated through its own face. */
  @Override
  public LoadedVessel piece(Piece piece) {
    Slab half = Slab.of(solution(), item.fill() / 2, piece.faceArea(), piece.faceArea());
    ShelfHeat heat = new ShelfHeat(NOTHING_BELOW, ShelfHeat.Wall.NONE, above(piece.heat()));
    return new LoadedVessel(new DryingVessel(half, cake(), 0), heat, 2);
  }

  private LoadedVessel shell(Flask flask, Flask.Form.Shell form) {
    Shell.Glass glass = new Shell.Glass(flask.wallThickness(), flask.glassConductivity());
    Shell shell = Shell.of(solution(), item.fill(), form.wallRadius(), form.height(), glass);
    RoomHeat heat = new RoomHeat(flask.roomHeatTransfer().best(), surroundings.room());
    return whole(shell, heat, flask.portResistance().best());
  }

  /** The glass below a puddle is flat and in series with the room. */
  private LoadedVessel puddle(Flask flask, Flask.Form.Puddle form) {
    Slab slab = Slab.of(solution(), item.fill(), form.area(), form.area());
    double resistance =
        1 / flask.roomHeatTransfer().best() + flask.wallThickness() / flask.glassConductivity();
    RoomHeat heat = new RoomHeat(1 / resistance, surroundings.room());
    return whole(slab, heat, flask.portResistance().best());
  }

  private LoadedVessel whole(FrontGeometry ice, HeatSource heat, double mouth) {
    return new LoadedVessel(new DryingVessel(ice, cake(), mouth), heat, 1);
  }

  private ShelfHeat.Above above(HeatFromAbove surface) {
    double coefficient = surface.coefficient().best();
    double conductivity = surface.cakeConductivity();
    return surroundings.above().isPresent()
        ? new ShelfHeat.Above.Fixed(
            new HeatSupply.Above(coefficient, conductivity, surroundings.above().getAsDouble()))
        : new ShelfHeat.Above.NextShelf(coefficient, conductivity);
  }

  private Solution solution() {
    return item.product().solution();
  }

  private CakeResistance cake() {
    return item.product().resistance().times(item.product().resistanceFactor().best());
  }
}
