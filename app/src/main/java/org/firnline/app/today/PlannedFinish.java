package org.firnline.app.today;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.store.KeptRun;
import org.firnline.evidence.Band;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.springframework.stereotype.Component;

/** When a run under way should be dry, by the plan it follows. */
@Component
class PlannedFinish {
  private final KeptPlans plans;

  PlannedFinish(KeptPlans plans) {
    this.plans = plans;
  }

  /**
   * When the last vessel becomes dry, nine chances in ten.
   *
   * @param start when primary drying began
   * @param low earliest
   * @param high latest
   */
  record Finish(Instant start, Instant low, Instant high) {}

  /** The finish, once primary drying has begun; empty without a plan that dries. */
  Optional<Finish> of(KeptRun run, Review review) {
    Optional<Instant> primary =
        review.phases().stream()
            .filter(phase -> phase.name() == Phase.Name.PRIMARY_DRYING)
            .map(Phase::start)
            .findFirst();
    if (run.planId().isEmpty() || primary.isEmpty()) {
      return Optional.empty();
    }
    return plans
        .find(run.planId().getAsLong())
        .flatMap(plan -> AnsweredPlan.of(plan.title(), plan.yaml()).answer())
        .map(answer -> answer.prediction().lastTime_s())
        .filter(last -> Double.isFinite(last.high()))
        .map(last -> after(primary.get(), last));
  }

  private static Finish after(Instant start, Band last) {
    return new Finish(
        start,
        start.plus(Duration.ofSeconds(Math.round(last.low()))),
        start.plus(Duration.ofSeconds(Math.round(last.high()))));
  }
}
