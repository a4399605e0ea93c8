package org.firnline.drying.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScheduledDryingTest {

  private static final double QUASI_STEADY_TIME = 1e-7;
  private static final double TRANSIENT_TIME = 2e-6;
  private static final double QUASI_STEADY_TEMPERATURE = 1e-6;
  private static final double TRANSIENT_TEMPERATURE = 1e-5;
  private static final double PEAK = 1e-4;

  private static final ShelfHeat HEAT = ShelfHeat.of(new HeatTransfer(10, 1.04, 0.0231));
  private static final ThermalMass MASS = new ThermalMass(4, 6);

  private static final DryingVessel VIAL =
      new DryingVessel(
          Slab.of(
              new Solution(1019.5, 0.05, 0, new PhaseDensities(917, 1590, 1000), 2.3),
              3e-6,
              3.801e-4,
              4.524e-4),
          new CakeResistance(4.8e4, 4.8e7, 0),
          0);

  private static Schedule atTenPascal(double start, ShelfStep... steps) {
    return Schedule.of(start, List.of(steps), List.of(new Track.Point(0, 10)));
  }

  private static void near(double actual, double expected, double relative) {
    assertThat(actual).isCloseTo(expected, within(relative * Math.abs(expected)));
  }

  /** Fully specified reference case; confirmed there by a second integrator to 5e-10. */
  @Nested
  class RampFromMinus45AndHold {

    private final Schedule schedule = atTenPascal(228.15, new ShelfStep(253.15, 0.5 / 60, 360_000));

    @Test
    void quasiSteady() {
      ScheduledRun run = ScheduledDrying.quasiSteady(VIAL, HEAT, schedule);
      assertThat(run.ending()).isEqualTo(ScheduledRun.Ending.DRIES);
      near(run.time(), 88902.50029499744, QUASI_STEADY_TIME);
      near(run.warmest().value(), 244.13606996177646, QUASI_STEADY_TEMPERATURE);
      near(run.peakRate().value(), 4.745704731808607e-08, PEAK);
    }

    @Test
    void withStoredHeat() {
      ScheduledRun run = ScheduledDrying.withStoredHeat(VIAL, HEAT, schedule, MASS, 228.15);
      near(run.time(), 89660.08151164732, TRANSIENT_TIME);
      near(run.warmest().value(), 244.12968012855336, TRANSIENT_TEMPERATURE);
      near(run.warmest().time(), 89660.08151164732, 0.01);
      near(run.peakRate().value(), 4.6007572661170116e-08, PEAK);
    }
  }

  /** The shelf falls to −50 °C for three hours; drying stops and starts again. */
  @Nested
  class ColdInterlude {

    private final Schedule schedule =
        atTenPascal(
            253.15,
            new ShelfStep(253.15, 1.0 / 60, 21_600),
            new ShelfStep(223.15, 0.5 / 60, 10_800),
            new ShelfStep(253.15, 0.5 / 60, 360_000));

    @Test
    void quasiSteady() {
      ScheduledRun run = ScheduledDrying.quasiSteady(VIAL, HEAT, schedule);
      near(run.time(), 102718.05894152852, QUASI_STEADY_TIME);
      near(run.warmest().value(), 244.13606996177646, QUASI_STEADY_TEMPERATURE);
      near(run.peakRate().value(), 4.877907990894742e-08, PEAK);
      assertThat(run.course()).anyMatch(moment -> moment.rate() == 0);
    }

    @Test
    void withStoredHeat() {
      ScheduledRun run = ScheduledDrying.withStoredHeat(VIAL, HEAT, schedule, MASS, 235.15);
      near(run.time(), 103328.5141089215, TRANSIENT_TIME);
      near(run.warmest().value(), 244.1296801300279, TRANSIENT_TEMPERATURE);
      near(run.peakRate().value(), 4.665255343089293e-08, PEAK);
    }
  }

  @Nested
  class Laws {

    /** Constant settings: the march in time is the quadrature in depth. */
    @Test
    void aConstantScheduleDriesAsTheQuadratureSays() {
      double quadrature = FastPrimaryDrying.run(VIAL, HEAT.at(253.15, 10), 10).time();
      ScheduledRun run = ScheduledDrying.quasiSteady(VIAL, HEAT, Schedule.constant(253.15, 10));
      near(run.time(), quadrature, QUASI_STEADY_TIME);
    }

    /** The lag is of first order in the heat capacity. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.01})
    void storedHeatVanishesWithTheHeatCapacity(double factor) {
      Schedule schedule = atTenPascal(228.15, new ShelfStep(253.15, 0.5 / 60, 360_000));
      double steady = ScheduledDrying.quasiSteady(VIAL, HEAT, schedule).time();
      double whole =
          ScheduledDrying.withStoredHeat(VIAL, HEAT, schedule, MASS, 228.15).time() - steady;
      double part =
          ScheduledDrying.withStoredHeat(VIAL, HEAT, schedule, MASS.times(factor), 228.15).time()
              - steady;
      assertThat(part / whole).isCloseTo(factor, within(0.15 * factor));
    }

    @Test
    void withoutHeatCapacityTheTwoFormsAreOne() {
      Schedule schedule = atTenPascal(228.15, new ShelfStep(253.15, 0.5 / 60, 360_000));
      assertThat(ScheduledDrying.withStoredHeat(VIAL, HEAT, schedule, MASS.times(0), 228.15).time())
          .isEqualTo(ScheduledDrying.quasiSteady(VIAL, HEAT, schedule).time());
    }

    /** A step of the pressure is as good as two constant parts. */
    @Test
    void aStepOfThePressureSplitsTheRun() {
      double half = 40_000;
      var pressure =
          Track.through(
              List.of(new Track.Point(0, 10), new Track.Point(half, 10), new Track.Point(half, 5)));
      var run =
          ScheduledDrying.quasiSteady(VIAL, HEAT, new Schedule(Track.constant(253.15), pressure));
      var atTen = ScheduledDrying.quasiSteady(VIAL, HEAT, Schedule.constant(253.15, 10));
      var atFive = ScheduledDrying.quasiSteady(VIAL, HEAT, Schedule.constant(253.15, 5));
      double depth = depthAt(atTen, half);
      assertThat(run.time() - half).isCloseTo(atFive.time() - timeAt(atFive, depth), within(1.0));
    }

    private static double depthAt(ScheduledRun run, double time) {
      return between(run, time, true);
    }

    private static double timeAt(ScheduledRun run, double depth) {
      return between(run, depth, false);
    }

    private static double between(ScheduledRun run, double key, boolean byTime) {
      for (int i = 1; i < run.course().size(); i++) {
        var a = run.course().get(i - 1);
        var b = run.course().get(i);
        double low = byTime ? a.time() : a.depth();
        double high = byTime ? b.time() : b.depth();
        if (low <= key && key <= high) {
          double share = (key - low) / (high - low);
          return byTime
              ? a.depth() + share * (b.depth() - a.depth())
              : a.time() + share * (b.time() - a.time());
        }
      }
      throw new IllegalArgumentException("not on the course: " + key);
    }

    @Test
    void anEndlessColdShelfIsUnfinished() {
      var run = ScheduledDrying.quasiSteady(VIAL, HEAT, Schedule.constant(228.15, 10));
      assertThat(run.ending()).isEqualTo(ScheduledRun.Ending.UNFINISHED);
    }

    @Test
    void aHotShelfMelts() {
      var dense = new DryingVessel(VIAL.geometry(), new CakeResistance(4.8e4, 4e8, 0), 0);
      var run = ScheduledDrying.quasiSteady(dense, HEAT, Schedule.constant(298.15, 20));
      assertThat(run.ending()).isEqualTo(ScheduledRun.Ending.MELTS);
      near(run.time(), 14992.149521194635, 1e-6);
    }
  }

  @Nested
  class Tracks {

    @Test
    void goStraightFromPointToPointAndStay() {
      var track = Track.through(List.of(new Track.Point(10, 1), new Track.Point(20, 3)));
      assertThat(track.at(0)).isEqualTo(1);
      assertThat(track.at(15)).isEqualTo(2);
      assertThat(track.at(99)).isEqualTo(3);
    }

    @Test
    void refusePointsThatGoBackInTime() {
      assertThat(
              org.assertj.core.api.Assertions.catchThrowable(
                  () -> Track.through(List.of(new Track.Point(10, 1), new Track.Point(5, 3)))))
          .hasMessageContaining("point 2");
    }
  }
}
