package org.firnline.lab;

import java.util.ArrayList;
import java.util.List;
import org.firnline.evidence.Problem;

/**
 * What a dryer is told to do, step by step.
 *
 * @param name what people call it; not blank
 * @param shelfStart shelf temperature when the first step begins, K; positive
 * @param steps in their order; at least one, phases never going back
 */
public record Recipe(String name, double shelfStart, List<RecipeStep> steps) {

  public Recipe {
    Check.named(name, "recipe name");
    Check.positive(shelfStart, "shelf temperature at the start", "K");
    steps = List.copyOf(steps);
    Check.that(
        !steps.isEmpty(),
        "no-steps",
        "recipe",
        "the recipe has no step",
        "needs one",
        "add a step");
    for (int step = 1; step < steps.size(); step++) {
      RecipePhase before = steps.get(step - 1).phase();
      RecipePhase now = steps.get(step).phase();
      Check.that(
          now.compareTo(before) >= 0,
          "phase-order",
          "step " + (step + 1),
          now.label() + " after " + before.label(),
          "phases do not go back",
          "reorder the steps");
    }
  }

  /** Whole time from the first ramp to the end of the last hold, s. */
  public double duration() {
    double total = 0;
    double shelf = shelfStart;
    for (RecipeStep step : steps) {
      total += step.duration(shelf);
      shelf = step.shelfTarget();
    }
    return total;
  }

  /**
   * Everything in this recipe that {@code dryer} does not accept; empty if it accepts all. Where a
   * dryer has no pressure control, steps must leave the pressure out.
   */
  public List<Problem> refusedBy(Dryer dryer) {
    if (dryer.shelves().isEmpty()) {
      return List.of(
          new Problem(
              "no-shelves",
              "recipe " + name,
              "recipe",
              "dryer " + dryer.name() + " has no shelves to set",
              "choose a dryer with shelves"));
    }
    List<Problem> problems = new ArrayList<>();
    for (int step = 0; step < steps.size(); step++) {
      String where = "step " + (step + 1);
      addShelfProblems(steps.get(step), dryer, where, problems);
      addPressureProblems(steps.get(step), dryer, where, problems);
    }
    return List.copyOf(problems);
  }

  private static void addShelfProblems(
      RecipeStep step, Dryer dryer, String where, List<Problem> problems) {
    if (!dryer.shelfTemperature().contains(step.shelfTarget())) {
      problems.add(
          outside(
              "shelf-range", "shelf target", step.shelfTarget() + " K", where, "shelves reach"));
    }
    if (step.ramp() > dryer.shelfRamp()) {
      problems.add(outside("ramp-range", "ramp", step.ramp() + " K/s", where, "shelves follow"));
    }
  }

  private static void addPressureProblems(
      RecipeStep step, Dryer dryer, String where, List<Problem> problems) {
    step.pressure()
        .ifPresent(
            pressure -> {
              boolean accepted =
                  dryer.pressureControl().map(range -> range.contains(pressure)).orElse(false);
              if (!accepted) {
                problems.add(
                    outside(
                        "pressure-range",
                        "chamber pressure",
                        pressure + " Pa",
                        where,
                        "pressure control accepts"));
              }
            });
  }

  private static Problem outside(
      String code, String noun, String value, String where, String limit) {
    return new Problem(
        code,
        noun + " " + value,
        where,
        "is outside what the dryer's " + limit,
        "change the step or choose another dryer");
  }
}
