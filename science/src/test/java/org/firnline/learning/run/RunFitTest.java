package org.firnline.learning.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ScheduledRun;
import org.firnline.drying.recipe.Track;
import org.firnline.lab.CakeResistance;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class RunFitTest {

  /** The full study is {@code scripts/learning-study.sh}; its figures are in docs/learning.md. */
  private static final int RUNS = 16;

  /**
   * Truth drawn from the priors: intervals of 90 % must hold it in about 9 of 10 cases. Of 64
   * intervals 4 binomial deviations are 9.6, so 48 or more.
   */
  @Test
  void intervalsHoldTheTruthAsOftenAsTheySay() {
    CoverageStudy study = CoverageStudy.of(8, RUNS);
    assertThat(study.held()).isBetween(48, 4 * RUNS);
    assertThat(study.bias(Parameter.HEAT_TRANSFER)).isCloseTo(0, within(0.02));
  }

  /**
   * The fast model against the adaptive one of {@code drying.recipe}, a second computation: a tenth
   * of what a thermometer or an end of ice is good for.
   */
  @Test
  void theFixedStepsFollowTheAdaptiveModel() {
    for (int run = 0; run < 4; run++) {
      SimulatedRuns.Drawn drawn = SimulatedRuns.draw(3, run);
      ProbedVessel vessel = drawn.vessel();
      double[] truth = drawn.truth();
      double[] fast = new TransientPrediction(vessel, SimulatedRuns.PRIORS).of(truth);
      ScheduledRun adaptive =
          ScheduledDrying.withStoredHeat(
              new DryingVessel(vessel.slab(), new CakeResistance(truth[1], truth[2], truth[3]), 0),
              ShelfHeat.of(SimulatedRuns.TUBING.times(truth[0])),
              stoppedAtReadings(vessel),
              vessel.mass(),
              vessel.productStart());
      assertThat(fast[fast.length - 1]).isCloseTo(adaptive.time(), within(1e-3 * adaptive.time()));
      for (int i = 0; i < vessel.readings().size(); i++) {
        double time = vessel.readings().get(i).time();
        double bottom =
            adaptive.course().stream()
                .filter(moment -> Math.abs(moment.time() - time) < 1e-3)
                .findFirst()
                .orElseThrow()
                .bottomTemperature();
        assertThat(fast[i] - truth[4]).isCloseTo(bottom, within(0.01));
      }
    }
  }

  private static Schedule stoppedAtReadings(ProbedVessel vessel) {
    List<Track.Point> stops =
        vessel.readings().stream()
            .map(reading -> new Track.Point(reading.time(), vessel.schedule().pressure().at(0)))
            .toList();
    return new Schedule(vessel.schedule().shelf(), Track.through(stops));
  }

  @Nested
  class WhatTheDataCannotTell {

    private final ProbedVessel whole = SimulatedRuns.draw(5, 2).vessel();

    private RunLesson learn(Optional<ProbedVessel.EndOfIce> end, int readings) {
      return RunFit.learn(
          new ProbedVessel(
              whole.name(),
              whole.slab(),
              whole.mass(),
              whole.schedule(),
              whole.productStart(),
              whole.readings().subList(0, readings),
              end),
          SimulatedRuns.PRIORS);
    }

    /** Without the end nothing says how fast the ice went: heat and resistance only as a ratio. */
    @Test
    void withoutTheEndHeatTransferIsMuchLessCertain() {
      RunLesson with = learn(whole.end(), 40);
      RunLesson without = learn(Optional.empty(), 12);
      assertThat(without.of(Parameter.HEAT_TRANSFER).spread())
          .isGreaterThan(3 * with.of(Parameter.HEAT_TRANSFER).spread());
      assertThat(without.endMisfit()).isNaN();
      assertThat(with.endMisfit()).isNotNaN();
    }

    /** The first tenth of a run says little about how the resistance levels off. */
    @Test
    void earlyReadingsLeaveLevelingToThePrior() {
      RunLesson early = learn(Optional.empty(), 8);
      assertThat(early.of(Parameter.RESISTANCE_LEVELING).isMostlyPrior()).isTrue();
    }

    @Test
    void parametersThatMoveTogetherAreNamed() {
      RunLesson lesson = learn(whole.end(), 40);
      List<List<Double>> rows = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        rows.add(new ArrayList<>(List.of(0.0, 0.0, 0.0, 0.0, 0.0)));
      }
      rows.get(0).set(1, -0.95);
      rows.get(2).set(3, 0.97);
      rows.get(0).set(4, 0.5);
      RunLesson entangled =
          new RunLesson(
              lesson.vessel(), lesson.learned(), rows, lesson.residuals(), 0, 0.1, 0, true);
      assertThat(entangled.indistinct())
          .containsExactly(
              new RunLesson.Pair(Parameter.RESISTANCE_GROWTH, Parameter.RESISTANCE_LEVELING, 0.97),
              new RunLesson.Pair(Parameter.HEAT_TRANSFER, Parameter.INITIAL_RESISTANCE, -0.95));
    }
  }

  @Test
  void aHeldParameterStaysAndSaysSo() {
    RunPriors priors = SimulatedRuns.PRIORS;
    RunPriors held =
        new RunPriors(
            priors.transfer(),
            priors.heatTransfer(),
            priors.initial(),
            priors.growth(),
            Prior.held(0),
            priors.offset());
    RunLesson lesson = RunFit.learn(SimulatedRuns.draw(5, 1).vessel(), held);
    Learned leveling = lesson.of(Parameter.RESISTANCE_LEVELING);
    assertThat(leveling.isHeld()).isTrue();
    assertThat(leveling.isMostlyPrior()).isFalse();
    assertThat(leveling.best()).isZero();
    assertThat(lesson.correlations().get(0).get(3)).isZero();
    assertThat(lesson.determined()).isTrue();
  }

  /** Readings that wander about the model together count as fewer than they are. */
  @Test
  void residualsThatHangTogetherWidenTheIntervals() {
    ProbedVessel vessel = SimulatedRuns.draw(5, 3).vessel();
    List<ProbedVessel.TemperatureReading> wandering =
        vessel.readings().stream()
            .map(
                reading ->
                    new ProbedVessel.TemperatureReading(
                        reading.time(),
                        reading.temperature()
                            + 0.8 * Math.sin(reading.time() / vessel.readings().get(8).time())))
            .toList();
    RunLesson steady = RunFit.learn(vessel, SimulatedRuns.PRIORS);
    RunLesson wanders =
        RunFit.learn(
            new ProbedVessel(
                "wandering",
                vessel.slab(),
                vessel.mass(),
                vessel.schedule(),
                vessel.productStart(),
                wandering,
                vessel.end()),
            SimulatedRuns.PRIORS);
    assertThat(wanders.together()).isGreaterThan(0.3);
    assertThat(wanders.noise()).isGreaterThan(2 * steady.noise());
  }

  @Test
  void refusesTooFewReadingsAndImpossibleBeliefs() {
    ProbedVessel vessel = SimulatedRuns.draw(5, 3).vessel();
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new ProbedVessel(
                    "probe 3",
                    vessel.slab(),
                    vessel.mass(),
                    vessel.schedule(),
                    vessel.productStart(),
                    vessel.readings().subList(0, 3),
                    vessel.end()))
        .withMessageContaining("probe 3");
    assertThatIllegalArgumentException().isThrownBy(() -> new Prior(1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new ProbedVessel.EndOfIce(-1, 1));
  }
}
