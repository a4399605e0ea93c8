package org.firnline.app.planfile;

import java.time.LocalDateTime;
import java.util.Optional;
import org.firnline.evidence.Band;
import org.firnline.planning.PlanAnswer;

/**
 * When the last vessel is dry, by the clock of the laboratory.
 *
 * @param low earliest credible moment
 * @param best most plausible moment
 * @param high latest credible moment; come back then
 */
public record Finish(LocalDateTime low, LocalDateTime best, LocalDateTime high) {

  /** The finish of a plan with a start; empty without one or when it never dries. */
  public static Optional<Finish> of(PlanInput input, PlanAnswer answer) {
    Band last = answer.prediction().lastTime_s();
    if (input.start().isEmpty() || !Double.isFinite(last.high())) {
      return Optional.empty();
    }
    LocalDateTime start = input.start().get();
    return Optional.of(
        new Finish(after(start, last.low()), after(start, last.best()), after(start, last.high())));
  }

  private static LocalDateTime after(LocalDateTime start, double seconds) {
    return start.plusSeconds(Math.round(seconds));
  }
}
