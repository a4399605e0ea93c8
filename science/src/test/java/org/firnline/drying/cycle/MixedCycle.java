package org.firnline.drying.cycle;

import java.util.List;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.RoomHeat;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Shell;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Solution;

/** Every shape of vessel, invented, that comes frozen and fits under one vacuum. */
final class MixedCycle {

  static final double ROOM = 291.15;

  private static final Solution EXTRACT = Solution.typical(1030, 0.08);
  private static final CakeResistance OPEN = new CakeResistance(2e4, 2e7, 20);
  private static final ShelfHeat.Above NEXT_SHELF = new ShelfHeat.Above.NextShelf(6, 0.04);

  private MixedCycle() {}

  /** Tubing vials. */
  static CycleVessel vial(double storedHeat) {
    return CycleVessel.of(
        1,
        new DryingVessel(ExampleCycle.SLAB, ExampleCycle.CAKE, 2e7),
        ShelfHeat.of(ExampleCycle.TUBING),
        ExampleCycle.MASS.times(storedHeat));
  }

  /** A tray under a warm shelf. */
  static CycleVessel tray(double storedHeat) {
    Slab slab = Slab.of(EXTRACT, 4e-4, 0.05, 0.05);
    return CycleVessel.of(
        1,
        new DryingVessel(slab, OPEN, 0),
        new ShelfHeat(new HeatTransfer(8, 0.5, 0.02), ShelfHeat.Wall.NONE, NEXT_SHELF),
        new ThermalMass(150, 700).times(storedHeat));
  }

  /** Half of a piece on a mesh: heat from its own face only. */
  static CycleVessel halfPiece(double storedHeat) {
    Slab half = Slab.of(EXTRACT, 5e-6, 1e-3, 1e-3);
    var face = new ShelfHeat.Above.Fixed(new HeatSupply.Above(12, 0.05, 288.15));
    return CycleVessel.of(
        1,
        new DryingVessel(half, OPEN, 0),
        new ShelfHeat(new HeatTransfer(0, 0, 0), ShelfHeat.Wall.NONE, face),
        new ThermalMass(0.5, 9).times(storedHeat));
  }

  /** A flask frozen on its wall, behind glass, on a port. */
  static CycleVessel shell(double storedHeat) {
    Shell shell = Shell.of(EXTRACT, 2e-4, 0.05, 0.13, new Shell.Glass(0.0025, 1.1));
    return CycleVessel.of(
        1,
        new DryingVessel(shell, OPEN, 1e6),
        new RoomHeat(7, ROOM),
        new ThermalMass(120, 380).times(storedHeat));
  }

  /** A puddle on the bottom of a flask. */
  static CycleVessel puddle(double storedHeat) {
    Slab slab = Slab.of(EXTRACT, 3e-5, 5e-3, 5e-3);
    return CycleVessel.of(
        1,
        new DryingVessel(slab, OPEN, 1e7),
        new RoomHeat(6.5, ROOM),
        new ThermalMass(30, 55).times(storedHeat));
  }

  static List<CycleVessel> each(double storedHeat) {
    return List.of(
        vial(storedHeat),
        tray(storedHeat),
        halfPiece(storedHeat),
        shell(storedHeat),
        puddle(storedHeat));
  }

  /** 200 vials, a tray, 40 halves, two flasks and a puddle. */
  static List<CycleVessel> load(double storedHeat) {
    return List.of(
        vial(storedHeat).times(200),
        tray(storedHeat),
        halfPiece(storedHeat).times(40),
        shell(storedHeat).times(2),
        puddle(storedHeat));
  }
}
