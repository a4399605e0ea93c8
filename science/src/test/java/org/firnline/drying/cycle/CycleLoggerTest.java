package org.firnline.drying.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.firnline.drying.sampling.Spread;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CycleLoggerTest {

  private static final CycleDryer DRYER = ExampleCycle.dryer(2.5e-6);
  private static final CycleRun RUN =
      new CycleSimulation(
              ExampleCycle.load(10),
              DRYER,
              CycleSchedule.of(ExampleCycle.recipe(30)),
              List.of(),
              CycleSimulation.USUAL_STEP)
          .run(0, 9);

  private static List<Double> values(CycleLog log, LoggedChannel.Kind kind) {
    return log.channel(kind, 0).values();
  }

  @Nested
  class TheTruth {

    private final CycleLog log = CycleLogger.exact(60).log(RUN, DRYER);

    @Test
    void hasEveryChannelAtEveryTime() {
      assertThat(log.channels()).hasSize(8);
      assertThat(log.channels()).allMatch(c -> c.values().size() == log.times().size());
    }

    /** The thermal gauge reads 1 + g x_w times the other while vapor fills the chamber. */
    @Test
    void liesBetweenTheTwoGauges() {
      int row = (int) (RUN.vacuumReached() / 60) + 120;
      double truth = values(log, LoggedChannel.Kind.CAPACITANCE_GAUGE).get(row);
      double thermal = values(log, LoggedChannel.Kind.THERMAL_GAUGE).get(row);
      assertThat(thermal / truth).isBetween(1.1, 1 + DRYER.vaporExcess());
    }

    @Test
    void isSeenByNoCapacitanceGaugeBeyondItsRange() {
      assertThat(values(log, LoggedChannel.Kind.CAPACITANCE_GAUGE).get(0))
          .isEqualTo(DRYER.gaugeLimit());
    }

    /** Vapor logged over time is the ice and the bound water that left. */
    @Test
    void addsUpToTheWaterThatLeft() {
      double logged = 0;
      for (double rate :
          values(CycleLogger.exact(10).log(RUN, DRYER), LoggedChannel.Kind.VAPOR_RATE)) {
        logged += 10 * rate;
      }
      double ice = 10 * ExampleCycle.SLAB.iceMass();
      double bound =
          RUN.fates().stream().mapToDouble(f -> (0.2 - f.finalMoisture()) * 1.53e-4).sum();
      assertThat(logged).isCloseTo(ice + bound, within(2e-3 * ice));
    }
  }

  @Nested
  class ThroughSensors {

    private static CycleLog through(Sensor sensor, long seed) {
      return new CycleLogger(60, Map.of(LoggedChannel.Kind.SHELF, sensor), List.of(), seed)
          .log(RUN, DRYER);
    }

    private final List<Double> truth =
        values(CycleLogger.exact(60).log(RUN, DRYER), LoggedChannel.Kind.SHELF);

    /** A first-order sensor on a ramp of slope s lags by s τ. */
    @Test
    void aLagTrailsARampByItsTimeConstant() {
      List<Double> late = values(through(new Sensor(0, 0, 0, 120, 0), 1), LoggedChannel.Kind.SHELF);
      int onTheRamp = 60;
      assertThat(truth.get(onTheRamp) - late.get(onTheRamp))
          .isCloseTo(-0.5 / 60 * 120, within(1e-6));
    }

    @Test
    void aBiasShiftsAll() {
      List<Double> shifted =
          values(through(new Sensor(0.7, 0, 0, 0, 0), 1), LoggedChannel.Kind.SHELF);
      assertThat(shifted.get(500)).isCloseTo(truth.get(500) + 0.7, within(1e-12));
    }

    /** Variance of the mean square of n normal deviates is 2/n; five standard errors. */
    @Test
    void noiseHasItsSpread() {
      List<Double> noisy =
          values(through(new Sensor(0, 0, 0.3, 0, 0), 1), LoggedChannel.Kind.SHELF);
      double square = 0;
      for (int row = 0; row < truth.size(); row++) {
        square += Math.pow((noisy.get(row) - truth.get(row)) / 0.3, 2) / truth.size();
      }
      assertThat(square).isCloseTo(1, within(5 * Math.sqrt(2.0 / truth.size())));
    }

    @Test
    void theSameSeedGivesTheSameLog() {
      assertThat(CycleLogger.usual(30, 5).log(RUN, DRYER))
          .isEqualTo(CycleLogger.usual(30, 5).log(RUN, DRYER))
          .isNotEqualTo(CycleLogger.usual(30, 6).log(RUN, DRYER));
    }
  }

  @Nested
  class FailedSensors {

    private static List<Double> failing(SensorFailure.Way way) {
      var failure = new SensorFailure(LoggedChannel.Kind.PRODUCT, 1, way, 40_000, 50_000);
      return new CycleLogger(60, Map.of(), List.of(failure), 0)
          .log(RUN, DRYER)
          .channel(LoggedChannel.Kind.PRODUCT, 1)
          .values();
    }

    @Test
    void showNothingWhereTheWireIsBroken() {
      List<Double> open = failing(SensorFailure.Way.OPEN);
      assertThat(open.get(700)).isNaN();
      assertThat(open.get(900)).isNotNaN();
    }

    @Test
    void showTheSameAgainAndAgainWhereTheyStick() {
      List<Double> stuck = failing(SensorFailure.Way.STUCK);
      assertThat(stuck.get(700)).isEqualTo(stuck.get(800));
      assertThat(stuck.get(600)).isNotEqualTo(stuck.get(700));
    }
  }

  @Nested
  class DrawnVessels {

    private final List<Double> nucleation = Collections.nCopies(400, 260.0);
    private final CycleVessel typical = ExampleCycle.vial(1, 1, 1, 260);

    @Test
    void areTheSameForTheSameSeed() {
      var draw = new VesselDraw(new Spread(0.06, 0.12, 0.01), 3);
      assertThat(draw.about(typical, nucleation)).isEqualTo(draw.about(typical, nucleation));
    }

    /** ln of the cake factors: mean 0, standard deviation as asked, within five standard errors. */
    @Test
    void haveTheSpreadTheyAreAskedFor() {
      var vessels = new VesselDraw(new Spread(0, 0.12, 0), 3).about(typical, nucleation);
      double mean = 0;
      double square = 0;
      for (CycleVessel vessel : vessels) {
        double factor = Math.log(vessel.vessel().cake().growth() / ExampleCycle.CAKE.growth());
        mean += factor / vessels.size();
        square += factor * factor / vessels.size();
      }
      assertThat(mean).isCloseTo(0, within(5 * 0.12 / 20));
      assertThat(Math.sqrt(square)).isCloseTo(0.12, within(5 * 0.12 / Math.sqrt(800)));
    }

    @Test
    void withoutSpreadAreTheTypicalOne() {
      var vessels = new VesselDraw(Spread.NONE, 3).about(typical, List.of(260.0));
      assertThat(vessels).containsExactly(typical);
    }
  }
}
