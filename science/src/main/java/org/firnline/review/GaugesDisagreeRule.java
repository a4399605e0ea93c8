package org.firnline.review;

import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/**
 * Both gauges should read alike while hardly any vapor flows: before the heat, or at the very end.
 */
final class GaugesDisagreeRule implements FindingRule {
  private static final double APART = 0.15;
  private static final double APART_AT_END = 0.35;
  private static final double SETTLE_S = 600;
  private static final double LEVEL_S = 1800;

  @Override
  public List<Finding> find(Facts facts) {
    Optional<GaugeRatio.Ratio> ratio = facts.ratio();
    if (ratio.isEmpty()) {
      return List.of();
    }
    int cold = facts.timeline().working() + facts.grid().steps(SETTLE_S);
    int heat =
        facts.ramps().stream()
            .filter(ramp -> ramp.isUp() && ramp.start() > cold)
            .mapToInt(Ramp::start)
            .findFirst()
            .orElse(cold);
    double before = ratio.get().raw().medianIn(cold, heat);
    boolean waits = heat - cold > facts.grid().steps(SETTLE_S);
    int vented = facts.timeline().vented() - 2;
    double after = ratio.get().raw().medianIn(vented - facts.grid().steps(LEVEL_S), vented);
    boolean low = after < 1 - APART || (waits && before < 1 - APART);
    boolean dried = facts.timeline().secondary() < facts.timeline().vented();
    boolean high = dried && after > 1 + APART_AT_END && !ratio.get().hasPlateau();
    if (!low && !high) {
      return List.of();
    }
    double worst = waits && Math.abs(before - 1) > Math.abs(after - 1) ? before : after;
    return List.of(
        new Finding(
            FindingKind.GAUGES_DISAGREE,
            Finding.Severity.WATCH,
            facts.grid().instant(cold),
            facts.grid().instant(facts.timeline().vented()),
            Confidence.MEDIUM,
            "The gauges disagree when they should agree: "
                + ratio.get().channels()
                + " is "
                + Spoken.digits(worst)
                + " while hardly any vapor flows. One of them reads wrong; the true pressure, and "
                + "the end of drying by ratio, are in doubt by as much.",
            List.of(
                "zero of the capacitance gauge has moved",
                "heat-loss gauge dirty or out of calibration"),
            "Compare both gauges at base vacuum and at the atmosphere; set the zero or recalibrate.",
            List.of(
                facts.evidence(
                    ratio.get().channels(),
                    cold,
                    facts.timeline().vented(),
                    "ratio " + Spoken.digits(worst)))));
  }
}
