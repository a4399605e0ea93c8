package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;

/**
 * A step of the recipe the run was to follow.
 *
 * @param phase the phase it belongs to
 * @param name what the step is called
 * @param shelf_K shelf temperature at its end, K; empty if the step leaves it alone
 * @param ramp_K_per_s how fast the shelf is to get there, K/s, positive; empty if not said
 * @param pressure_Pa chamber pressure, Pa; empty if the step leaves it alone
 * @param duration_s length in seconds, ramp included; 0 or more
 */
public record PlannedStep(
    RecipePhase phase,
    String name,
    OptionalDouble shelf_K,
    OptionalDouble ramp_K_per_s,
    OptionalDouble pressure_Pa,
    double duration_s) {
  public PlannedStep {
    Objects.requireNonNull(phase, "phase");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(shelf_K, "shelf_K");
    Objects.requireNonNull(ramp_K_per_s, "ramp_K_per_s");
    Objects.requireNonNull(pressure_Pa, "pressure_Pa");
    if (!(duration_s >= 0)) {
      throw new IllegalArgumentException(
          "step " + name + ": duration " + duration_s + " s must not be negative");
    }
    if (ramp_K_per_s.isPresent() && !(ramp_K_per_s.getAsDouble() > 0)) {
      throw new IllegalArgumentException(
          "step " + name + ": ramp " + ramp_K_per_s.getAsDouble() + " K/s must be positive");
    }
  }

  /** The steps of a recipe, numbered inside their phase where it has several. */
  public static List<PlannedStep> of(Recipe recipe) {
    List<PlannedStep> steps = new ArrayList<>();
    double shelf_K = recipe.shelfStart();
    int number = 0;
    for (RecipeStep step : recipe.steps()) {
      boolean sameAsLast = !steps.isEmpty() && steps.get(steps.size() - 1).phase() == step.phase();
      number = sameAsLast ? number + 1 : 1;
      long inPhase = recipe.steps().stream().filter(other -> other.phase() == step.phase()).count();
      steps.add(
          new PlannedStep(
              step.phase(),
              inPhase > 1 ? step.phase().label() + " " + number : step.phase().label(),
              OptionalDouble.of(step.shelfTarget()),
              OptionalDouble.of(step.ramp()),
              step.pressure(),
              step.duration(shelf_K)));
      shelf_K = step.shelfTarget();
    }
    return List.copyOf(steps);
  }
}
