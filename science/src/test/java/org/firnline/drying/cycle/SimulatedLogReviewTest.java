package org.firnline.drying.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.firnline.logs.LogReader;
import org.firnline.review.Endpoint;
import org.firnline.review.FindingKind;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the simulator writes, the reader reads and the reviewer judges; the truth is known. */
class SimulatedLogReviewTest {

  private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");
  private static final CycleDryer DRYER = ExampleCycle.dryer(5e-6);
  private static final CycleSchedule SCHEDULE = CycleSchedule.of(ExampleCycle.recipe(40));
  private static final CycleLogger LOGGER = CycleLogger.usual(60, 7);

  private static CycleRun simulate(Incident... incidents) {
    return new CycleSimulation(
            ExampleCycle.load(60), DRYER, SCHEDULE, List.of(incidents), CycleSimulation.USUAL_STEP)
        .run(10, 25);
  }

  private static Review review(CycleRun run) {
    String text = String.join("\n", CycleCsv.lines(LOGGER.log(run, DRYER), START)) + "\n";
    var reading = new LogReader().read("simulated.csv", text.getBytes(StandardCharsets.UTF_8));
    assertThat(reading.questions()).isEmpty();
    return new Reviewer().review(reading.log().orElseThrow(), ReviewContext.none());
  }

  private static double seconds(Instant at) {
    return Duration.between(START, at).toMillis() / 1_000.0;
  }

  private static double end(Review review, String phase) {
    return review.phases().stream()
        .filter(found -> found.name().label().equals(phase))
        .map(Phase::end)
        .mapToDouble(SimulatedLogReviewTest::seconds)
        .findFirst()
        .orElseThrow();
  }

  @Nested
  class AHealthyRun {

    private final CycleRun run = simulate();
    private final Review review = review(run);

    @Test
    void hasItsPhasesWithinTenMinutes() {
      assertThat(end(review, "freezing")).isCloseTo(SCHEDULE.evacuation(), within(600.0));
      assertThat(end(review, "primary drying")).isCloseTo(SCHEDULE.secondary(), within(600.0));
      assertThat(end(review, "secondary drying")).isCloseTo(SCHEDULE.backfill(), within(600.0));
    }

    @Test
    void hasTheEndsOfIceOfItsProbedVesselsWithinThreePercent() {
      double primary = SCHEDULE.secondary() - run.vacuumReached();
      int[] watched = {10, 25};
      for (int i = 0; i < watched.length; i++) {
        String name = "product " + (i + 1);
        Endpoint endpoint =
            review.endpoints().stream()
                .filter(found -> found.vessel().equals(java.util.Optional.of(name)))
                .findFirst()
                .orElseThrow();
        assertThat(seconds(endpoint.at().orElseThrow()))
            .isCloseTo(run.fates().get(watched[i]).endOfIce(), within(0.03 * primary));
      }
    }

    @Test
    void raisesNoAlarm() {
      assertThat(review.findings())
          .extracting(finding -> finding.kind())
          .doesNotContain(
              FindingKind.VACUUM_LEAK, FindingKind.SHELF_OVERSHOOT, FindingKind.SENSOR_DEAD);
    }
  }

  @Test
  void aLeakIsFound() {
    var leak = new Incident(Incident.Kind.LEAK, 45_000, 58_000, 0.075);
    assertThat(review(simulate(leak)).findings())
        .extracting(finding -> finding.kind())
        .contains(FindingKind.VACUUM_LEAK);
  }

  @Test
  void anOvershootIsFound() {
    var over = new Incident(Incident.Kind.SHELF_OVERSHOOT, 45_000, 52_000, 14);
    assertThat(review(simulate(over)).findings())
        .extracting(finding -> finding.kind())
        .contains(FindingKind.SHELF_OVERSHOOT);
  }

  @Test
  void theSameSeedWritesTheSameLog() {
    CycleRun run = simulate();
    assertThat(CycleCsv.lines(LOGGER.log(run, DRYER), START))
        .isEqualTo(CycleCsv.lines(LOGGER.log(run, DRYER), START));
  }
}
