package org.firnline.app.reading;

import java.util.List;
import java.util.OptionalDouble;
import org.firnline.lab.RecipePhase;
import org.firnline.planning.PlanAnswer;
import org.firnline.review.PlannedStep;

/** What a plan asks the dryer for, as steps a review can judge. */
public final class PlannedSteps {
  private PlannedSteps() {}

  /** The steps of a plan's answer: its hold of primary drying, as long as the last vessel needs. */
  public static List<PlannedStep> of(PlanAnswer answer) {
    double last_s = answer.prediction().lastTime_s().best();
    if (Double.isInfinite(last_s) || Double.isNaN(last_s)) {
      return List.of();
    }
    return List.of(
        new PlannedStep(
            RecipePhase.PRIMARY_DRYING,
            RecipePhase.PRIMARY_DRYING.label(),
            OptionalDouble.of(answer.hold().shelf_K()),
            OptionalDouble.empty(),
            OptionalDouble.of(answer.hold().pressure_Pa()),
            last_s));
  }
}
