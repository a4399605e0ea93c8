package org.firnline.drying.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firnline.drying.load.CoupledDrying;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.LoadSettings;
import org.firnline.drying.load.PressureControl;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ScheduledRun;
import org.firnline.drying.recipe.Track;
import org.firnline.matter.Water;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CycleSimulationTest {

  private static final double WIDE_OPEN = 1;

  private static CycleRun run(
      List<CycleVessel> vessels, CycleDryer dryer, CycleSchedule schedule, Incident... incidents) {
    return new CycleSimulation(
            vessels, dryer, schedule, List.of(incidents), CycleSimulation.USUAL_STEP)
        .run(0);
  }

  private static CycleSchedule schedule() {
    return CycleSchedule.of(ExampleCycle.recipe(40));
  }

  /** Drying under full vacuum from the first moment, as the march of order five sees it. */
  private static CycleSchedule vacuumFromTheStart() {
    Track shelf =
        Track.through(
            List.of(
                new Track.Point(0, 228.15),
                new Track.Point(3_000, 253.15),
                new Track.Point(200_000, 253.15)));
    return new CycleSchedule(shelf, Track.constant(10), 0, 200_000, 200_000, 200_000);
  }

  @Nested
  class Balances {

    private final CycleRun run = run(ExampleCycle.load(40), ExampleCycle.dryer(2.5e-6), schedule());

    @Test
    void ofMassClose() {
      assertThat(run.massError()).isLessThan(1e-6);
    }

    @Test
    void ofEnergyClose() {
      assertThat(run.energyError()).isLessThan(1e-6);
    }

    @Test
    void leaveNoVesselWithIce() {
      assertThat(run.lastEndOfIce()).isBetween(schedule().evacuation(), schedule().secondary());
    }
  }

  @Nested
  class AgainstOtherWays {

    /** The march of order five with its own ends; steps of a minute stay within 1e-4 of it. */
    @Test
    void oneVesselDriesAsTheFineMarchSays() {
      CycleVessel vial = frozen(ExampleCycle.MASS.times(1));
      ScheduledRun fine =
          ScheduledDrying.withStoredHeat(
              vial.vessel(),
              vial.heat(),
              new Schedule(vacuumFromTheStart().shelf(), Track.constant(10)),
              ExampleCycle.MASS,
              228.15);
      CycleRun run = run(List.of(vial), tinyChamber(), vacuumFromTheStart());
      assertThat(run.fates().get(0).endOfIce()).isCloseTo(fine.time(), within(1e-4 * fine.time()));
      assertThat(run.fates().get(0).warmestIce()).isCloseTo(fine.warmest().value(), within(0.02));
    }

    @Test
    void withoutStoredHeatItIsQuasiSteady() {
      CycleVessel vial = frozen(ExampleCycle.MASS.times(0.02));
      ScheduledRun quasiSteady =
          ScheduledDrying.quasiSteady(
              vial.vessel(),
              vial.heat(),
              new Schedule(vacuumFromTheStart().shelf(), Track.constant(10)));
      CycleRun run = run(List.of(vial), tinyChamber(), vacuumFromTheStart());
      assertThat(run.fates().get(0).endOfIce())
          .isCloseTo(quasiSteady.time(), within(1e-3 * quasiSteady.time()));
    }

    /** A load too large for its dryer floats to the pressure at which the coupled load meets it. */
    @Test
    void aLoadTooLargeFloatsAsTheCoupledLoadDoes() {
      CycleVessel vial = frozen(ExampleCycle.MASS.times(0.02));
      CycleVessel many = vial.times(3_000);
      CycleDryer narrow = tinyChamber(4e-6);
      Track shelf = Track.constant(263.15);
      var schedule = new CycleSchedule(shelf, Track.constant(8), 0, 150_000, 150_000, 150_000);
      CycleRun run = run(List.of(many), narrow, schedule);
      var coupled =
          CoupledDrying.run(
              DryingLoad.of(
                  new VesselGroup(
                      3_000,
                      new DryingVessel(ExampleCycle.SLAB, ExampleCycle.CAKE, 0),
                      ShelfHeat.of(ExampleCycle.TUBING))),
              new LoadSettings(263.15, new PressureControl.Held(8), narrow.path()),
              36_000);
      double expected =
          coupled.course().stream()
              .filter(state -> state.time() == 36_000)
              .findFirst()
              .orElseThrow()
              .pressure();
      double found = at(run, 36_000).pressure();
      assertThat(expected).isGreaterThan(12);
      assertThat(found).isCloseTo(expected, within(0.01 * expected));
    }

    /**
     * One-sided Plank: t = ρΔH/(T_f − T_s) (L/K + L²/2k), from the first ice of a slow nucleator.
     */
    @Test
    void freezingTakesThePlankTime() {
      Track shelf = Track.through(List.of(new Track.Point(0, 272.3), new Track.Point(1, 233.15)));
      var schedule = new CycleSchedule(shelf, Track.constant(10), 40_000, 40_000, 40_000, 40_000);
      CycleVessel vial = ExampleCycle.vial(1, 1, 1, CycleVessel.DILUTE_FREEZING_POINT - 0.01);
      var simulation = new CycleSimulation(List.of(vial), tinyChamber(), schedule, List.of(), 5);
      CycleRun run = simulation.run(0);
      double start = run.fates().get(0).nucleatedAt();
      double frozen =
          run.moments().stream()
              .filter(m -> m.time() > start + 60 && !stillFreezing(m))
              .findFirst()
              .orElseThrow()
              .time();
      double coefficient = ExampleCycle.TUBING.at(101_325) * 4.524e-4 / 3.801e-4;
      double depth = ExampleCycle.SLAB.thickness();
      double perVolume =
          ExampleCycle.SLAB.iceMass()
              * Water.FUSION_ENTHALPY
              / (depth * ExampleCycle.SLAB.productArea());
      double plank =
          perVolume
              / (CycleVessel.DILUTE_FREEZING_POINT - 233.15)
              * (depth / coefficient + depth * depth / (2 * 2.3));
      assertThat(frozen - start).isCloseTo(plank, within(0.01 * plank));
    }

    /**
     * Once frozen the bottom leaves the line from shelf to freezing point and falls to the shelf.
     */
    private static boolean stillFreezing(CycleMoment moment) {
      double layer = ExampleCycle.SLAB.thickness() / (2.3 * 3.801e-4);
      double outer = 1 / (ExampleCycle.TUBING.at(101_325) * 4.524e-4);
      double whenDone =
          233.15 + (CycleVessel.DILUTE_FREEZING_POINT - 233.15) * outer / (outer + layer);
      return moment.products().get(0) > whenDone + 0.02;
    }
  }

  @Nested
  class Incidents {

    private final CycleRun healthy =
        run(ExampleCycle.load(20), ExampleCycle.dryer(2.5e-6), schedule());

    private static final double START = 40_000;

    @Test
    void aLeakRaisesThePressureToWhatThePumpLeaves() {
      var leak = new Incident(Incident.Kind.LEAK, START, START + 7_200, 0.075);
      CycleRun run = run(ExampleCycle.load(20), ExampleCycle.dryer(2.5e-6), schedule(), leak);
      double expected = (0.075 + 1e-3) / 0.004;
      assertThat(at(run, START + 7_000).pressure()).isCloseTo(expected, within(0.01 * expected));
      assertThat(at(run, START + 7_000).vaporShare())
          .isLessThan(at(healthy, START + 7_000).vaporShare());
      assertThat(at(run, START + 20_000).pressure()).isCloseTo(10, within(0.1));
    }

    @Test
    void aPowerCutWarmsEverything() {
      var cut = new Incident(Incident.Kind.POWER_CUT, START, START + 3_600, 0);
      CycleRun run = run(ExampleCycle.load(20), ExampleCycle.dryer(2.5e-6), schedule(), cut);
      CycleMoment during = at(run, START + 3_500);
      assertThat(during.shelf()).isGreaterThan(at(healthy, START + 3_500).shelf() + 5);
      assertThat(during.pressure()).isGreaterThan(15);
      assertThat(during.collector()).isGreaterThan(230);
      assertThat(during.products().get(0))
          .isGreaterThan(at(healthy, START + 3_500).products().get(0));
    }

    @Test
    void aFarTooHotShelfMeltsAndSaysSo() {
      var hot = new Incident(Incident.Kind.SHELF_OVERSHOOT, START, START + 20_000, 150);
      CycleRun run = run(ExampleCycle.load(5), ExampleCycle.dryer(1e-8), schedule(), hot);
      assertThat(run.fates()).anyMatch(VesselFate::melted);
      assertThat(healthy.fates()).noneMatch(VesselFate::melted);
    }

    @Test
    void anOvershootWarmsTheShelfByItsSize() {
      var over = new Incident(Incident.Kind.SHELF_OVERSHOOT, START, START + 7_200, 14);
      CycleRun run = run(ExampleCycle.load(20), ExampleCycle.dryer(2.5e-6), schedule(), over);
      assertThat(at(run, START + 3_600).shelf()).isCloseTo(253.15 + 14, within(1e-6));
    }
  }

  @Nested
  class Phases {

    private final CycleRun run = run(ExampleCycle.load(20), ExampleCycle.dryer(2.5e-6), schedule());

    @Test
    void startAtTheAtmosphereAndEndThere() {
      assertThat(run.moments().get(0).pressure()).isEqualTo(DryerState.ATMOSPHERE_PA);
      assertThat(run.moments().get(run.moments().size() - 1).pressure()).isGreaterThan(9e4);
    }

    @Test
    void reachTheVacuumWithinMinutes() {
      assertThat(run.vacuumReached() - schedule().evacuation()).isBetween(60.0, 900.0);
    }

    @Test
    void loseTheBoundWaterInSecondaryDrying() {
      assertThat(run.fates().get(0).finalMoisture()).isBetween(0.003, 0.1);
    }

    @Test
    void areTheSameEveryTime() {
      CycleRun again = run(ExampleCycle.load(20), ExampleCycle.dryer(2.5e-6), schedule());
      assertThat(again.moments()).isEqualTo(run.moments());
      assertThat(again.fates()).isEqualTo(run.fates());
    }
  }

  private static CycleMoment at(CycleRun run, double time) {
    return run.moments().stream().filter(m -> m.time() >= time).findFirst().orElseThrow();
  }

  private static CycleDryer tinyChamber() {
    return tinyChamber(WIDE_OPEN);
  }

  /** A chamber that is empty at once. */
  private static CycleDryer tinyChamber(double slope) {
    CycleDryer usual = ExampleCycle.dryer(slope);
    return new CycleDryer(
        usual.path(),
        1e-9,
        usual.pumpingSpeed(),
        0,
        1,
        usual.collector(),
        usual.surroundings(),
        0.6,
        1333);
  }

  /** A vial that comes frozen. */
  private static CycleVessel frozen(org.firnline.drying.recipe.ThermalMass mass) {
    CycleVessel usual = ExampleCycle.vial(1, 1, 1, 270);
    return CycleVessel.of(1, usual.vessel(), usual.heat(), mass).holding(usual.water());
  }
}
