package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/**
 * The pressure stands above its level though the gas is vapor (or cannot be told): the load gives
 * off more than duct and collector take.
 */
final class PressureFloatsRule implements FindingRule {
  private static final double LONG_S = 180;
  private static final double RECIPE_STEP_S = 6 * 3600;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    boolean commanded = facts.run().first(Role.PRESSURE_SET_POINT).isPresent();
    for (PressureRise rise : facts.rises()) {
      boolean slow = rise.duration_s(facts.grid()) >= LONG_S;
      boolean vacuum = rise.peak_Pa() < PressureRise.TRIPLE_POINT_PA;
      boolean leak = LeakRule.isLeak(facts, rise);
      if (slow && vacuum && !leak && !OpenedRule.isOpening(facts, rise)) {
        boolean step = !commanded && rise.duration_s(facts.grid()) > RECIPE_STEP_S;
        findings.add(step ? step(facts, rise) : floats(facts, rise));
      }
    }
    return findings;
  }

  private static Finding floats(Facts facts, PressureRise rise) {
    List<Stretch> collector = CollectorRule.stretches(facts, rise.start(), rise.end());
    Optional<GaugeRatio.Ratio> ratio = facts.ratio().filter(GaugeRatio.Ratio::hasPlateau);
    List<String> causes = new ArrayList<>();
    if (!collector.isEmpty()) {
      causes.add("the collector warms and takes less vapor");
    }
    causes.add("the load gives off more vapor than duct and collector take");
    causes.add(ratio.isPresent() ? "a pressure control fault" : "a leak; one gauge cannot tell");
    return new Finding(
        FindingKind.PRESSURE_FLOATS,
        Finding.Severity.WATCH,
        facts.grid().instant(rise.start()),
        facts.grid().instant(rise.end()),
        ratio.isPresent() ? Confidence.HIGH : Confidence.MEDIUM,
        "The pressure floats up from "
            + Spoken.pressure(rise.base_Pa())
            + " to "
            + Spoken.pressure(rise.peak_Pa())
            + " for "
            + Spoken.duration(rise.duration_s(facts.grid()))
            + (ratio.isPresent() ? " while the gas stays vapor" : "")
            + ": the product runs warmer than planned. Lower the shelf until the pressure holds.",
        causes,
        "Load less, or start primary drying with a cooler shelf.",
        List.of(
            facts.evidence(
                rise.channel(),
                rise.start(),
                rise.end(),
                "rises to " + Spoken.pressure(rise.peak_Pa()))));
  }

  private static Finding step(Facts facts, PressureRise rise) {
    return new Finding(
        FindingKind.PRESSURE_FLOATS,
        Finding.Severity.INFORMATION,
        facts.grid().instant(rise.start()),
        facts.grid().instant(rise.end()),
        Confidence.LOW,
        "The pressure stands on a higher level for "
            + Spoken.duration(rise.duration_s(facts.grid()))
            + ", up to "
            + Spoken.pressure(rise.peak_Pa())
            + ". The log has no pressure set point: check whether the recipe asks for it.",
        List.of("a step of the recipe", "vapor the dryer cannot carry", "a leak"),
        "Log the pressure set point too.",
        List.of(facts.evidence(rise.channel(), rise.start(), rise.end(), "higher level")));
  }
}
