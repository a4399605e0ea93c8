package org.firnline.drying.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.firnline.drying.vessel.Surroundings;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Capability;
import org.firnline.lab.Chamber;
import org.firnline.lab.Collector;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.Dryer;
import org.firnline.lab.Flask;
import org.firnline.lab.Gauge;
import org.firnline.lab.HeatFromAbove;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Piece;
import org.firnline.lab.Product;
import org.firnline.lab.Range;
import org.firnline.lab.Solution;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.junit.jupiter.api.Test;

class ResolvedCycleTest {

  private static final Provenance STATED = new Provenance.Stated("the test");
  private static final Solution SOLUTION = Solution.typical(1020, 0.05);
  private static final HeatFromAbove ABOVE = new HeatFromAbove(exact(5), 0.04);

  private static Estimate exact(double value) {
    return Estimate.exact(value, STATED);
  }

  private static LoadItem item(Vessel vessel, double fill, int count) {
    var critical = new CriticalTemperature(CriticalTemperature.Kind.COLLAPSE, exact(242));
    var product =
        new Product("invented", SOLUTION, new CakeResistance(4e4, 4e7, 0), exact(1), critical);
    return new LoadItem(product, vessel, fill, count, 0.3);
  }

  private static List<LoadItem> everyKind() {
    return List.of(
        item(Iso8362Vial.R10.nominal(), 3e-6, 50),
        item(
            new Tray(
                "tray",
                0.4,
                0.3,
                0.025,
                new HeatTransfer(8, 1, 0.04),
                exact(1),
                Optional.of(ABOVE)),
            1e-3,
            2),
        item(flask(new Flask.Form.Shell(0.055, 0.15)), 3e-4, 4),
        item(flask(new Flask.Form.Puddle(0.008)), 5e-5, 4),
        item(new Piece("slice", 0.01, 0.002, ABOVE), 8e-6, 30));
  }

  private static Flask flask(Flask.Form form) {
    return new Flask("flask", 1.2e-3, form, 0.0025, 1.1, exact(7), exact(1e6));
  }

  /** Ice of the whole load: halves of pieces count twice. */
  @Test
  void keepsTheIceOfEveryKindOfVessel() {
    for (LoadItem item : everyKind()) {
      CycleVessel vessel = ResolvedCycle.vessel(item, Surroundings.USUAL, 5);
      double expected = item.count() * SOLUTION.iceMass(item.fill());
      assertThat(vessel.count() * vessel.vessel().geometry().iceMass())
          .isCloseTo(expected, within(1e-9 * expected));
      assertThat(vessel.critical()).hasValue(242);
    }
  }

  /** 1950 J/(kg K) of ice and 1400 of solids, shared by the parts of a vessel. */
  @Test
  void storesTheHeatOfItsIceAndSolids() {
    LoadItem piece = everyKind().get(4);
    CycleVessel half = ResolvedCycle.vessel(piece, Surroundings.USUAL, 0);
    double whole =
        1_950 * SOLUTION.iceMass(piece.fill()) + 1_400 * SOLUTION.solidsMass(piece.fill());
    assertThat(half.mass().frozen()).isCloseTo(whole / 2, within(1e-9 * whole));
    CycleVessel liquid = ResolvedCycle.liquid(everyKind().get(0), Surroundings.USUAL, 4, 262);
    double water = 3e-6 * 1020 * 0.95;
    assertThat(liquid.freezing().orElseThrow().liquidHeatCapacity())
        .isCloseTo(4_181 * water + 1_400 * 3e-6 * 1020 * 0.05, within(1e-6));
  }

  @Test
  void everyKindDriesTogetherOnAManifold() {
    Dryer manifold =
        Dryer.inRoomAir("manifold", new Capability.Line(2e-5, 1), new Collector(6, 1, 205))
            .with(Chamber.of(0.01, 2e-3), List.of(Gauge.ThermalConductivity.unlearned("hot wire")));
    CycleDryer machine =
        ResolvedCycle.dryer(manifold, CycleDryer.Surroundings.USUAL, 1e-4).orElseThrow();
    assertThat(machine.control()).isEqualTo(CycleDryer.Control.FLOATS);
    assertThat(machine.vaporExcess()).isEqualTo(0.6);
    List<CycleVessel> flasks =
        everyKind().subList(2, 4).stream()
            .map(item -> ResolvedCycle.vessel(item, Surroundings.USUAL, 60))
            .map(
                v ->
                    v.during(
                        new CycleVessel.Stay(
                            5_400, Double.POSITIVE_INFINITY, java.util.OptionalDouble.of(238))))
            .toList();
    var room = org.firnline.drying.recipe.Track.constant(295);
    double end = 300_000;
    var schedule = new CycleSchedule(room, room, 0, end, end, end);
    CycleRun run = new CycleSimulation(flasks, machine, schedule, List.of(), 60).run(0, 1);
    assertThat(run.lastEndOfIce()).isLessThan(end);
    assertThat(run.collector().overfilled()).isFalse();
    assertThat(run.massError()).isLessThan(1e-9);
  }

  @Test
  void holdsTheSetPointWhereThereIsAControlAndIsSilentWhereTheChamberIsUnknown() {
    Dryer shelf =
        new Dryer(
            "bench",
            new Range(230, 310),
            new Range(4, 60),
            0.01,
            new Capability.Duct(0.005, 0.8, 293),
            new Collector(4, 2e-5, 218));
    assertThat(ResolvedCycle.dryer(shelf, CycleDryer.Surroundings.USUAL, 0)).isEmpty();
    CycleDryer known =
        ResolvedCycle.dryer(
                shelf.with(Chamber.of(0.1, 5e-3), List.of()), CycleDryer.Surroundings.USUAL, 0)
            .orElseThrow();
    assertThat(known.control()).isEqualTo(CycleDryer.Control.HOLDS_SET_POINT);
    assertThat(known.capacity()).isEqualTo(4);
    assertThat(known.shelfRamp()).isEqualTo(0.01);
  }
}
