package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/** The dryer did not do what the plan asked for: shelf, pressure or ramp of a step differ. */
final class PlanRule implements FindingRule {
  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    for (JudgedStep step : new PlanJudge(facts).judge()) {
      if (step.state() == JudgedStep.State.OTHER_SETTINGS) {
        findings.add(finding(facts, step));
      }
    }
    return findings;
  }

  private static Finding finding(Facts facts, JudgedStep step) {
    String channel =
        facts
            .run()
            .first(Role.SHELF)
            .or(() -> facts.run().truestGauge())
            .map(Trace::name)
            .orElse("");
    String what = String.join("; ", step.differences());
    return new Finding(
        FindingKind.NOT_AS_PLANNED,
        Finding.Severity.WATCH,
        step.start().orElseThrow(),
        step.end().orElseThrow(),
        Confidence.HIGH,
        ReviewWords.say("plan.finding", step.planned().name(), what),
        List.of(
            ReviewWords.say("plan.cause.typed"),
            ReviewWords.say("plan.cause.changed"),
            ReviewWords.say("plan.cause.dryer")),
        ReviewWords.say("plan.next"),
        List.of(new Evidence(channel, step.start().orElseThrow(), step.end().orElseThrow(), what)));
  }
}
