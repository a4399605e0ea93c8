package org.firnline.app.run;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.review.EndVerdict;
import org.firnline.review.JudgedStep;
import org.firnline.review.Review;
import org.firnline.units.QuantityKind;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Verdicts on the ice and the plan beside what happened, in words. */
@Component
class Judgements {
  private static final String NOTHING = "–";

  private final MessageSource words;

  Judgements(MessageSource words) {
    this.words = words;
  }

  /**
   * What all methods together say about the ice of one vessel or of the load.
   *
   * @param state {@code pass} where the ice is gone, {@code watch} where it is not or nobody knows
   */
  record VerdictRow(
      String what,
      String state,
      String verdict,
      String at,
      String between,
      String confidence,
      List<String> reasons) {}

  /**
   * A planned step beside what happened; each text reads planned, then actual.
   *
   * @param state {@code pass} where it ran as planned, {@code watch} where it did not
   */
  record StepRow(
      String name,
      String state,
      String verdict,
      Pair shelf,
      Pair pressure,
      Pair ramp,
      Pair duration,
      List<String> differences) {}

  /** A planned and an actual value. */
  record Pair(String planned, String actual) {}

  List<VerdictRow> verdicts(Review review, LogClock clock, Locale locale) {
    String load = words.getMessage("run.endpoint.load", null, locale);
    return review.verdicts().stream().map(verdict -> row(verdict, load, clock)).toList();
  }

  private static VerdictRow row(EndVerdict verdict, String load, LogClock clock) {
    return new VerdictRow(
        verdict.vessel().orElse(load),
        verdict.state() == EndVerdict.State.ICE_GONE ? "pass" : "watch",
        verdict.state().label(),
        verdict.at().map(clock::moment).orElse(""),
        verdict.low().flatMap(low -> verdict.high().map(high -> clock.span(low, high))).orElse(""),
        verdict.confidence().label(),
        verdict.reasons());
  }

  List<StepRow> steps(Review review) {
    return review.steps().stream().map(Judgements::row).toList();
  }

  private static StepRow row(JudgedStep step) {
    return new StepRow(
        step.planned().name(),
        step.state() == JudgedStep.State.AS_PLANNED ? "pass" : "watch",
        step.state().label(),
        pair(step.planned().shelf_K(), step.shelf_K(), QuantityKind.TEMPERATURE),
        pair(step.planned().pressure_Pa(), step.pressure_Pa(), QuantityKind.PRESSURE),
        pair(step.planned().ramp_K_per_s(), step.ramp_K_per_s(), QuantityKind.TEMPERATURE_RATE),
        new Pair(
            Shown.duration(step.planned().duration_s()),
            step.duration_s().isPresent()
                ? Shown.duration(step.duration_s().getAsDouble())
                : NOTHING),
        step.differences());
  }

  private static Pair pair(OptionalDouble planned, OptionalDouble actual, QuantityKind kind) {
    return new Pair(text(planned, kind), text(actual, kind));
  }

  private static String text(OptionalDouble si, QuantityKind kind) {
    return si.isPresent() ? Quantities.words(si.getAsDouble(), kind) : NOTHING;
  }
}
