package org.firnline.learning.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.firnline.drying.cycle.BoundWater;
import org.firnline.drying.cycle.CycleCsv;
import org.firnline.drying.cycle.CycleDryer;
import org.firnline.drying.cycle.CycleLogger;
import org.firnline.drying.cycle.CycleRun;
import org.firnline.drying.cycle.CycleSchedule;
import org.firnline.drying.cycle.CycleSimulation;
import org.firnline.drying.cycle.CycleVessel;
import org.firnline.drying.cycle.Incident;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.secondary.Desorption;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Product;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;
import org.firnline.lab.Solution;
import org.firnline.lab.Vial;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import org.firnline.review.Finding;
import org.firnline.review.FindingKind;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;
import org.junit.jupiter.api.Test;

/** From a simulated cycle through its log, the reader and the reviewer to what is learned. */
class ProbedVesselsTest {

  private static final Provenance STATED = new Provenance.Stated("test");
  private static final Vial VIAL = Iso8362Vial.R10.nominal();
  private static final Solution SOLUTION = Solution.typical(1020, 0.05);
  private static final CakeResistance CAKE = new CakeResistance(4.8e4, 4.8e7, 60);
  private static final double HEAT_FACTOR = 1.18;
  private static final double CAKE_FACTOR = 1.3;

  private static LoadItem item() {
    Product product =
        new Product(
            "extract",
            SOLUTION,
            CAKE,
            new Estimate(1, 0.25, STATED),
            new CriticalTemperature(
                CriticalTemperature.Kind.COLLAPSE, new Estimate(243, 2, STATED)));
    return new LoadItem(product, VIAL, 3e-6, 60, 0.3);
  }

  private static CycleVessel vessel(double count, double heat) {
    Slab slab = Slab.of(SOLUTION, 3e-6, VIAL.innerArea(), VIAL.outerArea());
    return CycleVessel.of(
            count,
            new DryingVessel(slab, CAKE.times(CAKE_FACTOR), 0),
            ShelfHeat.of(VIAL.heatTransfer().times(heat)),
            new ThermalMass(2.2, 5.5))
        .freezing(new CycleVessel.Freezing(263, CycleVessel.DILUTE_FREEZING_POINT, 12.2))
        .holding(BoundWater.of(new Desorption(670.179127262, 40_000, 0.003), 0.2, 1.53e-4));
  }

  private static Log log(Incident... incidents) {
    double ramp = 0.5 / 60;
    Recipe recipe =
        new Recipe(
            "invented",
            293.15,
            List.of(
                step(RecipePhase.FREEZING, 228.15, ramp, OptionalDouble.empty(), 2),
                step(RecipePhase.EVACUATION, 228.15, ramp, OptionalDouble.of(10), 0.25),
                step(RecipePhase.PRIMARY_DRYING, 253.15, ramp, OptionalDouble.of(10), 34),
                step(RecipePhase.SECONDARY_DRYING, 298.15, 0.2 / 60, OptionalDouble.of(10), 5),
                step(RecipePhase.BACKFILL, 298.15, ramp, OptionalDouble.empty(), 0.25)));
    var path = new VaporPath(List.of(new MeasuredLine(5e-6, 0)), 0);
    CycleDryer dryer =
        new CycleDryer(
            path, 0.12, 0.004, 1e-3, 1.0 / 60, 203.15, CycleDryer.Surroundings.USUAL, 0.6, 1333);
    CycleRun run =
        new CycleSimulation(
                List.of(vessel(1, HEAT_FACTOR), vessel(59, 1)),
                dryer,
                CycleSchedule.of(recipe),
                List.of(incidents),
                CycleSimulation.USUAL_STEP)
            .run(0);
    String text =
        String.join(
            "\n",
            CycleCsv.lines(
                CycleLogger.usual(60, 5).log(run, dryer), Instant.parse("2026-03-02T07:00:00Z")));
    return new LogReader()
        .read("simulated.csv", text.getBytes(StandardCharsets.UTF_8))
        .log()
        .orElseThrow();
  }

  private static RecipeStep step(
      RecipePhase phase, double target, double ramp, OptionalDouble pressure, double hold_h) {
    return new RecipeStep(phase, target, ramp, pressure, hold_h * 3600);
  }

  private static Review review(Log log) {
    return new Reviewer().review(log, ReviewContext.none());
  }

  /**
   * Truth of the probed vial: K_v 1.18 times the plan's, R_0 and A_1 1.3 times. The end is read
   * from its thermometer, which is true to about 3 %; so is K_v.
   */
  @Test
  void theTruthComesBackThroughTheWholeChain() {
    Log log = log();
    List<ProbedVessel> vessels = ProbedVessels.in(log, review(log), item());
    assertThat(vessels).hasSize(1);
    RunLesson lesson = RunFit.learn(vessels.get(0), RunPriors.of(item()));
    double heat = HEAT_FACTOR * VIAL.heatTransfer().at(vessels.get(0).meanPressure());
    assertThat(lesson.of(Parameter.HEAT_TRANSFER).best()).isCloseTo(heat, within(0.04 * heat));
    assertThat(lesson.of(Parameter.HEAT_TRANSFER).holds(heat)).isTrue();
    assertThat(lesson.of(Parameter.INITIAL_RESISTANCE).holds(CAKE_FACTOR * 4.8e4)).isTrue();
    assertThat(lesson.of(Parameter.RESISTANCE_GROWTH).holds(CAKE_FACTOR * 4.8e7)).isTrue();
    assertThat(lesson.noise()).isLessThan(0.3);
  }

  @Test
  void aRunWithALeakTeachesNothing() {
    Review review = review(log(new Incident(Incident.Kind.LEAK, 45_000, 58_000, 0.075)));
    assertThat(LearningRefusal.of(review))
        .extracting(Finding::kind)
        .contains(FindingKind.VACUUM_LEAK);
    assertThat(LearningRefusal.of(review(log()))).isEmpty();
  }

  @Test
  void aLogWithoutThermometersHasNoProbedVessel() {
    List<String> rows = new ArrayList<>();
    rows.add("time,shelf (degC),chamber capacitance (Pa)");
    for (int minute = 0; minute < 600; minute++) {
      rows.add(Instant.parse("2026-03-02T07:00:00Z").plusSeconds(60L * minute) + ",-20,10");
    }
    Log log =
        new LogReader()
            .read("bare.csv", String.join("\n", rows).getBytes(StandardCharsets.UTF_8))
            .log()
            .orElseThrow();
    assertThat(ProbedVessels.in(log, review(log), item())).isEmpty();
  }
}
