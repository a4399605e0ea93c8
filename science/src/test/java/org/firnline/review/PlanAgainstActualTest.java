package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import org.firnline.logs.SharedLogs;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The made-up run was made by a recipe; the judge has to find its steps again. */
class PlanAgainstActualTest {
  private static final double HOUR_S = 3600;
  private static final double RAMP = 0.5 / 60;

  /** What {@link SyntheticRun} does: its set points and times, written as a recipe. */
  private static Recipe recipe() {
    return new Recipe(
        "invented",
        293.15,
        List.of(
            step(RecipePhase.FREEZING, 228.15, RAMP, OptionalDouble.empty(), 4 * HOUR_S - 7800),
            step(RecipePhase.EVACUATION, 228.15, RAMP, OptionalDouble.of(10), 1800),
            step(RecipePhase.PRIMARY_DRYING, 253.15, RAMP, OptionalDouble.of(10), 24.67 * HOUR_S),
            step(
                RecipePhase.SECONDARY_DRYING,
                298.15,
                0.2 / 60,
                OptionalDouble.of(10),
                2.25 * HOUR_S),
            step(RecipePhase.BACKFILL, 298.15, RAMP, OptionalDouble.empty(), 1080)));
  }

  private static RecipeStep step(
      RecipePhase phase, double shelf, double ramp, OptionalDouble pressure, double hold_s) {
    return new RecipeStep(phase, shelf, ramp, pressure, hold_s);
  }

  private static List<JudgedStep> judged(Log log, List<PlannedStep> plan) {
    return new Reviewer().review(log, new ReviewContext(OptionalDouble.empty(), plan)).steps();
  }

  private static List<PlannedStep> changed(int index, PlannedStep other) {
    List<PlannedStep> steps = new ArrayList<>(PlannedStep.of(recipe()));
    steps.set(index, other);
    return steps;
  }

  private static double second(Instant moment) {
    return Duration.between(Instant.parse("2026-10-12T06:00:00Z"), moment).toSeconds();
  }

  /** The vapor share falls at the end of every run; at twice the planned pressure it is no leak. */
  @Test
  void another_pressure_than_planned_is_no_leak() {
    Log log =
        new LogReader()
            .read("run.csv", SharedLogs.bytes("log05-quoted-missing.csv"))
            .log()
            .orElseThrow();
    PlannedStep hold =
        new PlannedStep(
            RecipePhase.PRIMARY_DRYING,
            "primary drying",
            OptionalDouble.of(242.65),
            OptionalDouble.empty(),
            OptionalDouble.of(4),
            200_000);
    Review review =
        new Reviewer().review(log, new ReviewContext(OptionalDouble.empty(), List.of(hold)));
    assertThat(review.findings())
        .extracting(Finding::kind)
        .contains(FindingKind.NOT_AS_PLANNED)
        .doesNotContain(FindingKind.VACUUM_LEAK);
  }

  @Nested
  class A_run_that_follows_its_recipe {
    private final List<JudgedStep> steps =
        judged(new SyntheticRun().log(), PlannedStep.of(recipe()));

    @Test
    void follows_it_in_every_step() {
      assertThat(steps)
          .extracting(JudgedStep::state)
          .containsOnly(JudgedStep.State.AS_PLANNED)
          .hasSize(5);
    }

    @Test
    void shows_where_each_step_began_and_ended() {
      double ramp_s = SyntheticRun.PUMP_S + 1800;
      assertThat(second(steps.get(1).start().orElseThrow()))
          .isCloseTo(SyntheticRun.PUMP_S, within(120.0));
      assertThat(second(steps.get(2).start().orElseThrow())).isCloseTo(ramp_s, within(300.0));
      assertThat(second(steps.get(2).end().orElseThrow()))
          .isCloseTo(SyntheticRun.HEAT_S, within(300.0));
      assertThat(second(steps.get(3).end().orElseThrow()))
          .isCloseTo(SyntheticRun.VENT_S, within(120.0));
    }

    @Test
    void shows_what_the_settings_were() {
      JudgedStep primary = steps.get(2);
      assertThat(primary.shelf_K().orElseThrow()).isCloseTo(253.15, within(0.1));
      assertThat(primary.pressure_Pa().orElseThrow()).isCloseTo(10, within(0.1));
      assertThat(primary.ramp_K_per_s().orElseThrow()).isCloseTo(RAMP, within(0.1 * RAMP));
      assertThat(primary.differences()).isEmpty();
    }
  }

  @Nested
  class A_run_that_does_not {
    @Test
    void has_another_shelf() {
      PlannedStep step = PlannedStep.of(recipe()).get(2);
      var colder =
          new PlannedStep(
              step.phase(),
              step.name(),
              OptionalDouble.of(248.15),
              step.ramp_K_per_s(),
              step.pressure_Pa(),
              step.duration_s());
      Review review =
          new Reviewer()
              .review(
                  new SyntheticRun().log(),
                  new ReviewContext(OptionalDouble.empty(), changed(2, colder)));
      assertThat(review.steps().get(2).state()).isEqualTo(JudgedStep.State.OTHER_SETTINGS);
      assertThat(review.steps().get(2).differences().get(0))
          .contains("−20.0 °C instead of −25.0 °C")
          .contains("5.0 K warmer");
      assertThat(review.findings())
          .filteredOn(finding -> finding.kind() == FindingKind.NOT_AS_PLANNED)
          .singleElement()
          .satisfies(finding -> assertThat(finding.text()).contains("primary drying"));
    }

    @Test
    void has_another_pressure_and_another_ramp() {
      PlannedStep step = PlannedStep.of(recipe()).get(2);
      var other =
          new PlannedStep(
              step.phase(),
              step.name(),
              step.shelf_K(),
              OptionalDouble.of(2 * RAMP),
              OptionalDouble.of(6),
              step.duration_s());
      assertThat(judged(new SyntheticRun().log(), changed(2, other)).get(2).differences())
          .hasSize(2)
          .anyMatch(text -> text.contains("instead of 0.0600 mbar"))
          .anyMatch(text -> text.contains("instead of 1.00 K/min"));
    }

    @Test
    void takes_longer_than_planned() {
      PlannedStep step = PlannedStep.of(recipe()).get(2);
      var shorter =
          new PlannedStep(
              step.phase(),
              step.name(),
              step.shelf_K(),
              step.ramp_K_per_s(),
              step.pressure_Pa(),
              18 * HOUR_S);
      JudgedStep judged = judged(new SyntheticRun().log(), changed(2, shorter)).get(2);
      assertThat(judged.state()).isEqualTo(JudgedStep.State.OTHER_DURATION);
      assertThat(judged.duration_s().orElseThrow()).isCloseTo(25.5 * HOUR_S, within(600.0));
      assertThat(judged.differences().get(0)).contains("instead of 18.0 h").contains("longer");
    }
  }

  @Nested
  class A_log_that_shows_only_a_part {
    @Test
    void leaves_the_step_open_in_which_it_ends_and_does_not_see_the_rest() {
      Log log = new SyntheticRun().cut(12 * HOUR_S, SyntheticRun.END_S + 60).log();
      List<JudgedStep> steps = judged(log, PlannedStep.of(recipe()));
      assertThat(steps)
          .extracting(JudgedStep::state)
          .containsExactly(
              JudgedStep.State.AS_PLANNED,
              JudgedStep.State.AS_PLANNED,
              JudgedStep.State.UNDER_WAY,
              JudgedStep.State.NOT_SEEN,
              JudgedStep.State.NOT_SEEN);
      assertThat(steps.get(4).duration_s()).isEmpty();
    }

    @Test
    void says_what_it_cannot_compare() {
      List<JudgedStep> steps = judged(new SyntheticRun().log(false), PlannedStep.of(recipe()));
      assertThat(steps.get(2).pressure_Pa()).isEmpty();
      assertThat(steps.get(2).differences())
          .singleElement()
          .asString()
          .contains("no gauge of true pressure");
      assertThat(steps.get(2).state()).isEqualTo(JudgedStep.State.AS_PLANNED);
    }
  }

  @Nested
  class Steps_of_a_recipe {
    @Test
    void are_numbered_where_a_phase_has_several() {
      Recipe two =
          new Recipe(
              "two",
              293.15,
              List.of(
                  step(RecipePhase.PRIMARY_DRYING, 243.15, RAMP, OptionalDouble.of(8), 3600),
                  step(RecipePhase.PRIMARY_DRYING, 253.15, RAMP, OptionalDouble.of(8), 3600),
                  step(RecipePhase.SECONDARY_DRYING, 293.15, RAMP, OptionalDouble.of(8), 3600)));
      assertThat(PlannedStep.of(two))
          .extracting(PlannedStep::name)
          .containsExactly("primary drying 1", "primary drying 2", "secondary drying");
      assertThat(PlannedStep.of(two).get(1).duration_s()).isCloseTo(10 / RAMP + 3600, within(1e-6));
    }

    @Test
    void refuse_nonsense() {
      assertThatThrownBy(() -> planned(-1, OptionalDouble.empty())).hasMessageContaining("-1.0 s");
      assertThatThrownBy(() -> planned(60, OptionalDouble.of(0))).hasMessageContaining("ramp 0.0");
      assertThatThrownBy(
              () ->
                  new JudgedStep(
                      planned(60, OptionalDouble.empty()),
                      JudgedStep.State.NOT_SEEN,
                      Optional.of(Instant.EPOCH),
                      Optional.empty(),
                      OptionalDouble.empty(),
                      OptionalDouble.empty(),
                      OptionalDouble.empty(),
                      List.of()))
          .hasMessageContaining("together");
    }

    private PlannedStep planned(double duration_s, OptionalDouble ramp) {
      return new PlannedStep(
          RecipePhase.FREEZING,
          "freezing",
          OptionalDouble.empty(),
          ramp,
          OptionalDouble.empty(),
          duration_s);
    }
  }
}
