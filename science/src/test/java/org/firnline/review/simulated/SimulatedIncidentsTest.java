package org.firnline.review.simulated;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.firnline.drying.cycle.Incident;
import org.firnline.review.Finding;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every incident put into a simulated run is found, dated, and shown by channels of the log. */
class SimulatedIncidentsTest {

  @ParameterizedTest
  @EnumSource
  void is_found_with_all_channels(IncidentDraw incident) {
    found(incident, Logged.EVERYTHING, 1_000);
    found(incident, Logged.EVERYTHING, 1_010);
  }

  /** A leak that is there from the evacuation on is told only by a set point or a plan. */
  @ParameterizedTest
  @EnumSource(
      mode = EnumSource.Mode.EXCLUDE,
      names = {"LEAK_FROM_THE_START", "OVERLOAD"})
  void is_found_without_set_points(IncidentDraw incident) {
    found(incident, Logged.NO_SET_POINTS, 1_001);
  }

  private static void found(IncidentDraw incident, Logged logged, long number) {
    SimulatedRun run = incident.in(new RunDraw(number, logged), new Chance(number)).draw();
    Review review = new Reviewer().review(run.log(), ReviewContext.none());
    List<Finding> told =
        review.findings().stream().filter(f -> incident.expected().contains(f.kind())).toList();
    assertThat(told).as(incident + " in " + review.findings()).isNotEmpty();
    Finding finding = told.get(0);
    for (Incident wrong : run.incidents()) {
      Duration slack = Duration.ofMinutes(15);
      double start = SimulatedRun.second(finding.start().minus(slack));
      double end = SimulatedRun.second(finding.end().plus(slack));
      assertThat(wrong.start()).isBetween(start, end);
    }
    assertThat(finding.text()).doesNotContain("NaN").doesNotContain("{");
    assertThat(finding.evidence())
        .isNotEmpty()
        .allSatisfy(
            seen ->
                assertThat(seen.channel().split(" / "))
                    .allMatch(
                        name ->
                            run.log().channels().stream().anyMatch(c -> c.name().equals(name))));
  }
}
