package org.firnline.drying.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.load.CoupledDrying;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.LoadRun;
import org.firnline.drying.load.LoadSettings;
import org.firnline.drying.load.PressureControl;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.Shell;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ScheduledRun;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.recipe.Track;
import org.firnline.drying.secondary.Desorption;
import org.firnline.drying.secondary.SecondaryDrying;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;
import org.firnline.matter.solute.GordonTaylor1952;
import org.firnline.numerics.GaussLegendre;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every shape of vessel, and what may happen to it, in one chamber. */
class MixedCycleTest {

  private static final double END = 400_000;
  private static final double COLD = 228.15;

  /** A chamber that is empty at once and a collector that is cold from the first moment. */
  private static CycleDryer dryer(VaporPath path) {
    return new CycleDryer(
        path,
        1e-9,
        0.004,
        0,
        1,
        203.15,
        new CycleDryer.Surroundings(MixedCycle.ROOM, 14_400, 60),
        0.6,
        1_333);
  }

  private static CycleSchedule vacuum(Track shelf, double pressure_Pa) {
    return new CycleSchedule(shelf, Track.constant(pressure_Pa), 0, END, END, END);
  }

  private static Track warming() {
    return Track.through(List.of(new Track.Point(0, COLD), new Track.Point(3_000, 263.15)));
  }

  private static CycleRun run(
      List<CycleVessel> vessels, CycleDryer dryer, CycleSchedule schedule, Incident... wrong) {
    int[] all = IntStream.range(0, vessels.size()).toArray();
    return new CycleSimulation(vessels, dryer, schedule, List.of(wrong), CycleSimulation.USUAL_STEP)
        .run(all);
  }

  private static CycleMoment at(CycleRun run, double time) {
    return run.moments().stream().filter(m -> m.time() >= time).findFirst().orElseThrow();
  }

  static Stream<CycleVessel> shapes() {
    return MixedCycle.each(1).stream();
  }

  @Nested
  class EachShape {

    /** Order five with error control against minutes of order two: within 1e-4. */
    @ParameterizedTest
    @MethodSource("org.firnline.drying.cycle.MixedCycleTest#shapes")
    void driesAsTheFineMarchSays(CycleVessel vessel) {
      ScheduledRun fine =
          ScheduledDrying.withStoredHeat(
              vessel.vessel(),
              vessel.heat(),
              new Schedule(warming(), Track.constant(15)),
              vessel.mass(),
              COLD);
      CycleRun run = run(List.of(vessel), dryer(VaporPath.UNLIMITED), vacuum(warming(), 15));
      assertThat(run.fates().get(0).endOfIce()).isCloseTo(fine.time(), within(1e-4 * fine.time()));
      assertThat(run.fates().get(0).warmestIce()).isCloseTo(fine.warmest().value(), within(0.02));
      assertThat(run.massError()).isLessThan(1e-9);
      assertThat(run.energyError()).isLessThan(1e-9);
    }
  }

  @Nested
  class TogetherInOneChamber {

    private final VaporPath narrow = new VaporPath(List.of(new MeasuredLine(4e-6, 2)), 0);

    private LoadRun quasiSteady(PressureControl control, double moment) {
      DryingLoad load =
          new DryingLoad(
              MixedCycle.load(1).stream()
                  .map(v -> new VesselGroup(v.count(), v.vessel(), v.heat()))
                  .toList());
      return CoupledDrying.run(load, new LoadSettings(263.15, control, narrow), moment);
    }

    private static double pressure(LoadRun run, double moment) {
      return run.course().stream()
          .filter(state -> state.time() == moment)
          .findFirst()
          .orElseThrow()
          .pressure();
    }

    /** Without stored heat the cycle is the coupled load, which steps in depth at order five. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theyFloatAsTheCoupledLoadDoes(boolean controlled) {
      PressureControl control =
          controlled ? new PressureControl.Held(6) : new PressureControl.Floating();
      CycleDryer dryer = controlled ? dryer(narrow) : dryer(narrow).floating();
      CycleRun run = run(MixedCycle.load(0.01), dryer, vacuum(Track.constant(263.15), 6));
      LoadRun coupled = quasiSteady(control, 20_000);
      assertThat(pressure(coupled, 20_000)).isGreaterThan(8);
      assertThat(at(run, 20_000).pressure())
          .isCloseTo(pressure(coupled, 20_000), within(0.005 * pressure(coupled, 20_000)));
      for (int i = 0; i < run.fates().size(); i++) {
        double expected = coupled.groupEnds().get(i);
        assertThat(run.fates().get(i).endOfIce()).isCloseTo(expected, within(3e-3 * expected));
      }
    }

    @Test
    void theirBalancesClose() {
      CycleRun run = run(MixedCycle.load(1), dryer(narrow), vacuum(warming(), 6));
      assertThat(run.massError()).isLessThan(1e-6);
      assertThat(run.energyError()).isLessThan(1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 7.5, 60, 900})
    void aLoggerReadsEveryChannelOfEveryShape(double interval_s) {
      Track shelf = warming();
      var schedule = new CycleSchedule(shelf, Track.constant(6), 0, 3_600, 7_200, 9_000);
      CycleRun run = run(MixedCycle.load(1), dryer(narrow), schedule);
      CycleLog log = CycleLogger.usual(interval_s, 7).log(run, dryer(narrow));
      assertThat(log.times()).hasSize((int) (9_000 / interval_s) + 1);
      assertThat(log.channels()).hasSize(6 + MixedCycle.load(1).size());
      assertThat(log.channels())
          .allSatisfy(
              channel ->
                  assertThat(channel.values())
                      .hasSameSizeAs(log.times())
                      .allMatch(Double::isFinite));
    }

    /** Nothing in a simulation knows of another one or of the machine's threads. */
    @Test
    void giveTheSameBitsOnManyThreads() {
      CycleSchedule schedule = vacuum(warming(), 6);
      CycleRun alone = run(MixedCycle.load(1), dryer(narrow), schedule);
      List<CycleRun> crowd =
          IntStream.range(0, 4)
              .parallel()
              .mapToObj(i -> run(MixedCycle.load(1), dryer(narrow), schedule))
              .toList();
      assertThat(crowd).allSatisfy(run -> assertThat(run.moments()).isEqualTo(alone.moments()));
    }
  }

  @Nested
  class Freezing {

    /**
     * From the wall inward: t = ∫ ΔH dm (R_c + ln(r_o/r)/(2πkH))/(T_f − T_s), by quadrature over
     * the radius.
     */
    @Test
    void aShellTakesTheTimeOfItsFront() {
      CycleVessel flask = MixedCycle.shell(0.001);
      Shell shell = (Shell) flask.vessel().geometry();
      double bath = 233.15;
      var cold =
          CycleVessel.of(
                  1,
                  flask.vessel(),
                  new org.firnline.drying.primary.RoomHeat(300, bath),
                  flask.mass())
              .freezing(new CycleVessel.Freezing(272.14, 272.15, 1e-3));
      var schedule = new CycleSchedule(Track.constant(273), Track.constant(10), END, END, END, END);
      var simulation =
          new CycleSimulation(List.of(cold), dryer(VaporPath.UNLIMITED), schedule, List.of(), 2);
      CycleRun run = simulation.run(0);
      double outer = shell.outerConductance(300, shell.thickness());
      double along = 2 * Math.PI * shell.frozenConductivity() * shell.height();
      double free = shell.wallRadius() - shell.thickness();
      double heat =
          GaussLegendre.integrate(
              radius ->
                  shell.icePerVolume()
                      * 2
                      * Math.PI
                      * radius
                      * shell.height()
                      * Water.FUSION_ENTHALPY
                      * (1 / outer + Math.log(shell.wallRadius() / radius) / along),
              free,
              shell.wallRadius(),
              1e-12);
      double expected = heat / (272.15 - bath);
      double wallWhenDone =
          bath + (272.15 - bath) / (1 + outer * Math.log(shell.wallRadius() / free) / along);
      double start = run.fates().get(0).nucleatedAt();
      double done =
          run.moments().stream()
              .filter(m -> m.time() > start + 60 && m.products().get(0) <= wallWhenDone)
              .findFirst()
              .orElseThrow()
              .time();
      assertThat(done - start).isCloseTo(expected, within(2e-3 * expected + 2));
    }
  }

  @Nested
  class Glass {

    private static final GordonTaylor1952 SUCROSE = new GordonTaylor1952(335.15, 4.7, 138.15);
    private static final Desorption DESORPTION = new Desorption(670.179127262, 40_000, 0.003);

    /** From the end of ice on the cake is a secondary drying along the shelf. */
    @Test
    void isLookedAtInEveryVesselWhileItWarms() {
      Track shelf =
          Track.through(
              List.of(
                  new Track.Point(0, 263.15),
                  new Track.Point(150_000, 263.15),
                  new Track.Point(168_000, 313.15)));
      CycleVessel vial =
          MixedCycle.vial(0.01).holding(BoundWater.of(DESORPTION, 0.12, 1e-4).in(SUCROSE));
      CycleRun run = run(List.of(vial), dryer(VaporPath.UNLIMITED), vacuum(shelf, 10));
      double ends = run.fates().get(0).endOfIce();
      Track after =
          Track.through(
              List.of(
                  new Track.Point(0, 263.15),
                  new Track.Point(150_000 - ends, 263.15),
                  new Track.Point(168_000 - ends, 313.15)));
      var alone = new SecondaryDrying(DESORPTION, 0.12, after);
      SecondaryDrying.GlassMargin expected = alone.leastMargin(SUCROSE, END - ends);
      SecondaryDrying.GlassMargin found = run.leastGlassMargin().orElseThrow();
      assertThat(found.margin()).isCloseTo(expected.margin(), within(0.05));
      assertThat(found.time()).isCloseTo(ends + expected.time(), within(120.0));
      assertThat(run.fates().get(0).finalMoisture())
          .isCloseTo(alone.moisture(END - ends), within(1e-5));
      assertThat(run.fates().get(0).softened()).isEqualTo(expected.margin() < 0);
    }

    @Test
    void isNotLookedAtWhereNobodyKnowsIt() {
      CycleRun run =
          run(List.of(MixedCycle.vial(1)), dryer(VaporPath.UNLIMITED), vacuum(warming(), 10));
      assertThat(run.leastGlassMargin()).isEmpty();
      assertThat(run.fates().get(0).softened()).isFalse();
    }
  }

  @Nested
  class AnnealingBeforeTheVacuum {

    private static final double PUMP = 30_000;

    private static CycleRun annealed(double warm_s, CycleVessel vessel) {
      Track shelf =
          Track.through(
              List.of(
                  new Track.Point(0, 228.15),
                  new Track.Point(1_000, 228.15),
                  new Track.Point(1_000, 258.15),
                  new Track.Point(1_000 + warm_s, 258.15),
                  new Track.Point(1_000 + warm_s, 228.15),
                  new Track.Point(PUMP, 228.15),
                  new Track.Point(PUMP + 3_000, 253.15)));
      var schedule = new CycleSchedule(shelf, Track.constant(10), PUMP, END, END, END);
      return run(List.of(vessel), fast(), schedule);
    }

    /** Shelves that follow at once. */
    private static CycleDryer fast() {
      return new CycleDryer(
          VaporPath.UNLIMITED,
          1e-9,
          0.004,
          0,
          1e6,
          203.15,
          CycleDryer.Surroundings.USUAL,
          0.6,
          1e9);
    }

    private static Annealing halves(double hold_s) {
      var stated = new Provenance.Stated("the test");
      return new Annealing(250, hold_s, Estimate.exact(0.5, stated), Estimate.exact(0.5, stated));
    }

    private static CycleVessel tenTimes(double cakeFactor) {
      CycleVessel usual = MixedCycle.vial(0.001);
      return CycleVessel.of(1, usual.vessel().varied(1, cakeFactor), usual.heat(), usual.mass());
    }

    @Test
    void opensTheCakeByItsFactor() {
      CycleRun whole = annealed(20_000, tenTimes(1).annealedBy(halves(10_000)));
      CycleRun known = annealed(20_000, tenTimes(0.5));
      assertThat(whole.fates().get(0).endOfIce())
          .isCloseTo(known.fates().get(0).endOfIce(), within(1e-6 * END));
    }

    @Test
    void opensItPartlyInPartOfTheTime() {
      CycleRun part = annealed(10_000, tenTimes(1).annealedBy(halves(20_000)));
      CycleRun known = annealed(10_000, tenTimes(0.75));
      assertThat(part.fates().get(0).endOfIce())
          .isCloseTo(known.fates().get(0).endOfIce(), within(2e-3 * END));
    }

    @Test
    void doesNothingInTheCold() {
      CycleRun cold = annealed(0.5, tenTimes(1).annealedBy(halves(10_000)));
      CycleRun known = annealed(0.5, tenTimes(1));
      assertThat(cold.fates().get(0).endOfIce())
          .isCloseTo(known.fates().get(0).endOfIce(), within(1e-3 * END));
    }

    @Test
    void slowsTheLossOfBoundWater() {
      BoundWater water = BoundWater.of(new Desorption(670, 40_000, 0.003), 0.12, 1e-4);
      double annealed =
          annealed(20_000, tenTimes(1).holding(water).annealedBy(Annealing.usual(250)))
              .fates()
              .get(0)
              .finalMoisture();
      double not = annealed(20_000, tenTimes(1).holding(water)).fates().get(0).finalMoisture();
      assertThat(annealed).isGreaterThan(not);
    }

    @Test
    void refusesWhatCannotBe() {
      var stated = new Provenance.Stated("the test");
      Estimate half = Estimate.exact(0.5, stated);
      assertThatThrownBy(() -> new Annealing(250, 0, half, half))
          .hasMessageContaining("must be positive");
    }
  }

  @Nested
  class ComingAndGoing {

    private static final double JOINS = 10_000;

    private static CycleVessel added(double from, double until) {
      return MixedCycle.shell(1).during(new CycleVessel.Stay(from, until, OptionalDouble.of(COLD)));
    }

    /** In a room and at a held pressure a flask dries the same whenever it is put on. */
    @Test
    void aFlaskAddedLaterDriesAsOneThatWasThere() {
      CycleRun run =
          run(
              List.of(added(0, Double.POSITIVE_INFINITY), added(JOINS, Double.POSITIVE_INFINITY)),
              dryer(VaporPath.UNLIMITED),
              vacuum(Track.constant(MixedCycle.ROOM), 20));
      double first = run.fates().get(0).endOfIce();
      double second = run.fates().get(1).endOfIce();
      assertThat(second - JOINS).isCloseTo(first, within(1e-4 * first));
      assertThat(at(run, JOINS - 60).products().get(1)).isEqualTo(COLD);
    }

    @Test
    void aFlaskTakenOffKeepsItsIce() {
      CycleRun run =
          run(
              List.of(added(0, JOINS)),
              dryer(VaporPath.UNLIMITED),
              vacuum(Track.constant(MixedCycle.ROOM), 20));
      assertThat(run.fates().get(0).endOfIce()).isInfinite();
      assertThat(at(run, JOINS + 60).vaporRate()).isZero();
    }

    @Test
    void anOpenedPortIsFeltByTheOthers() {
      CycleDryer manifold = dryer(new VaporPath(List.of(new MeasuredLine(4e-6, 2)), 0)).floating();
      var opened = new Incident(Incident.Kind.PORT_OPENED, JOINS, JOINS + 60, 4);
      Track none = Track.constant(MixedCycle.ROOM);
      List<CycleVessel> flasks =
          List.of(added(0, Double.POSITIVE_INFINITY), added(JOINS, Double.POSITIVE_INFINITY));
      CycleRun calm = run(flasks, manifold, vacuum(none, 5));
      CycleRun disturbed = run(flasks, manifold, vacuum(none, 5), opened);
      assertThat(at(disturbed, JOINS + 50).pressure())
          .isGreaterThan(10 * at(calm, JOINS + 50).pressure());
      assertThat(at(disturbed, JOINS + 50).products().get(0))
          .isGreaterThan(at(calm, JOINS + 50).products().get(0));
    }

    @Test
    void refusesAStayThatEndsBeforeItBegins() {
      assertThatThrownBy(() -> new CycleVessel.Stay(5, 5, OptionalDouble.empty()))
          .hasMessageContaining("cannot stay");
    }
  }

  @Nested
  class WhenPowerFails {

    private static final double FAILS = 30_000;

    /** Newton's law alone leaves out the cooling by sublimation: it is the short side. */
    @Test
    void thereIsAtLeastTheTimeThatNewtonGives() {
      var cut = new Incident(Incident.Kind.POWER_CUT, FAILS, FAILS + 40_000, 0);
      CycleVessel flask = MixedCycle.shell(1);
      CycleVessel vessel =
          flask
              .limitedTo(256.15)
              .during(new CycleVessel.Stay(0, Double.POSITIVE_INFINITY, OptionalDouble.of(COLD)));
      CycleRun run =
          run(
              List.of(vessel),
              dryer(VaporPath.UNLIMITED),
              vacuum(Track.constant(MixedCycle.ROOM), 20),
              cut);
      double start = at(run, FAILS).products().get(0);
      Shell shell = (Shell) flask.vessel().geometry();
      ThermalMass mass = flask.mass();
      var newton =
          new WarmUp(mass.vessel(), shell.outerConductance(7, shell.thickness()), MixedCycle.ROOM);
      double least = newton.timeTo(start, 256.15);
      assertThat(least).isGreaterThan(0);
      assertThat(run.fates().get(0).warmUpTime(cut)).isGreaterThan(least).isLessThan(40_000);
    }

    @Test
    void theLimitHoldsWhereNothingFails() {
      CycleRun run =
          run(
              List.of(MixedCycle.vial(1).limitedTo(270)),
              dryer(VaporPath.UNLIMITED),
              vacuum(warming(), 10));
      assertThat(run.fates().get(0).limitPassedAt()).isInfinite();
    }
  }

  @Nested
  class TheCollector {

    @Test
    void holdsWhatTheLoadGaveOffAndSaysWhenItWasFull() {
      CycleRun run =
          run(MixedCycle.load(1), dryer(VaporPath.UNLIMITED).holding(0.3), vacuum(warming(), 10));
      double ice =
          MixedCycle.load(1).stream()
              .mapToDouble(v -> v.count() * v.vessel().geometry().iceMass())
              .sum();
      assertThat(run.collector().ice()).isCloseTo(ice, within(1e-9));
      assertThat(run.collector().overfilled()).isTrue();
      assertThat(run.collector().fullAt()).isBetween(0.0, run.lastEndOfIce());
    }

    /** No chamber stays below the vapor pressure of the ice on its collector. */
    @Test
    void keepsThePressureAboveThatOfItsIce() {
      CycleDryer usual = dryer(VaporPath.UNLIMITED);
      var warm =
          new CycleDryer(usual.path(), 1e-9, 0.004, 0, 1, 238.15, usual.surroundings(), 0.6, 1_333);
      CycleRun run = run(MixedCycle.load(1), warm, vacuum(warming(), 5));
      double floor = new WagnerEtAl2011Ice().pressure(238.15);
      assertThat(at(run, 10_000).pressure()).isCloseTo(floor, within(1e-3 * floor));
    }

    @Test
    void givesItsVaporBackWhenItsCoolingStops() {
      var stop = new Incident(Incident.Kind.COLLECTOR_STOP, 20_000, 23_600, 0);
      CycleRun run =
          run(MixedCycle.load(1), dryer(VaporPath.UNLIMITED), vacuum(warming(), 6), stop);
      CycleMoment during = at(run, 20_060);
      double ofIce = new WagnerEtAl2011Ice().pressure(Math.min(273.16, during.collector()));
      assertThat(during.collector()).isGreaterThan(250);
      assertThat(during.pressure()).isCloseTo(Math.max(6, ofIce), within(0.15 * ofIce));
    }
  }
}
