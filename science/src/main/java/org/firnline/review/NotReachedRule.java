package org.firnline.review;

import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/** The log ends, or air is let in, before any sign shows that the ice is gone. */
final class NotReachedRule implements FindingRule {
  @Override
  public List<Finding> find(Facts facts) {
    boolean vesselDry = facts.ends().stream().anyMatch(end -> end.point().isPresent());
    boolean loadDry = facts.loadEnds().stream().anyMatch(Endpoint::reached);
    boolean canTell = !facts.ends().isEmpty() || facts.ratio().isPresent();
    if (facts.vacuum().isEmpty() || vesselDry || loadDry || !canTell) {
      return List.of();
    }
    Optional<Trace> seen = facts.run().vesselThermometers().stream().findFirst();
    String channel = seen.or(() -> facts.run().truestGauge()).map(Trace::name).orElse("");
    int from = facts.timeline().working();
    int to = facts.timeline().vented();
    boolean vented = facts.vacuum().get().sawVent(facts.run().size());
    return List.of(
        new Finding(
            FindingKind.END_NOT_REACHED,
            vented ? Finding.Severity.ALARM : Finding.Severity.INFORMATION,
            facts.grid().instant(from),
            facts.grid().instant(to),
            Confidence.MEDIUM,
            vented
                ? "Air is let in before any sign shows that the ice is gone, after "
                    + Spoken.duration((to - from) * facts.grid().step_s())
                    + " under vacuum. Look for ice and wet cakes before you store the load."
                : "The log ends before the ice is gone, after "
                    + Spoken.duration((to - from) * facts.grid().step_s())
                    + " under vacuum. Keep the run going and review a longer log.",
            List.of(),
            "",
            List.of(facts.evidence(channel, from, to, "no end of ice in this stretch"))));
  }
}
