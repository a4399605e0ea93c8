package org.firnline.review;

import java.util.List;
import org.firnline.logs.channel.Confidence;

/** With one gauge no ratio can show the end of drying. */
final class SingleGaugeRule implements FindingRule {
  @Override
  public List<Finding> find(Facts facts) {
    if (facts.ratio().isPresent() || facts.run().truestGauge().isEmpty()) {
      return List.of();
    }
    Trace gauge = facts.run().truestGauge().orElseThrow();
    int from = facts.timeline().working();
    int to = facts.timeline().vented();
    return List.of(
        new Finding(
            FindingKind.SINGLE_GAUGE,
            Finding.Severity.INFORMATION,
            facts.grid().instant(from),
            facts.grid().instant(to),
            Confidence.HIGH,
            "The log holds no second gauge of the other kind beside "
                + gauge.name()
                + ": the end of drying cannot be read from a gauge ratio. Rely on the "
                + "thermometers, on the pressure settling, or on weighing.",
            List.of(),
            "If the dryer has a second gauge, log it too.",
            List.of(facts.evidence(gauge.name(), from, to, "the only gauge on the chamber"))));
  }
}
