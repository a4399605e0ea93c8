package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.logs.channel.Confidence;

/** The pressure passes the triple point of water for long: ice under it can melt. */
final class VacuumLostRule implements FindingRule {
  private static final double LONG_S = 3600;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    for (PressureRise rise : facts.rises()) {
      boolean lost = rise.peak_Pa() > PressureRise.TRIPLE_POINT_PA;
      boolean opened = OpenedRule.isOpening(facts, rise);
      if (lost && !opened) {
        findings.add(finding(facts, rise));
      }
    }
    return findings;
  }

  private static Finding finding(Facts facts, PressureRise rise) {
    double length_s = rise.duration_s(facts.grid());
    boolean collector = !CollectorRule.stretches(facts, rise.start(), rise.end()).isEmpty();
    return new Finding(
        FindingKind.VACUUM_LOST,
        Finding.Severity.ALARM,
        facts.grid().instant(rise.start()),
        facts.grid().instant(rise.end()),
        length_s > LONG_S ? Confidence.HIGH : Confidence.MEDIUM,
        "The vacuum is lost for "
            + Spoken.duration(length_s)
            + ": the pressure reaches "
            + Spoken.pressure(rise.peak_Pa())
            + ", above the triple point, where ice melts instead of subliming. Look for melted "
            + "or foamed product.",
        collector
            ? List.of("the whole dryer stopped: the collector warms too", "power cut")
            : List.of("pump stopped or its valve shut", "a large leak or an open port"),
        "Have pump, valves and seals checked before the next run.",
        List.of(
            facts.evidence(
                rise.channel(), rise.start(), rise.end(), Spoken.pressure(rise.peak_Pa()))));
  }
}
