package org.firnline.review;

import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/** The heat of secondary drying is raised while the load still gives off vapor. */
final class HeatTooEarlyRule implements FindingRule {
  private static final double STILL_MUCH = 0.2;

  @Override
  public List<Finding> find(Facts facts) {
    int secondary = facts.timeline().secondary();
    if (secondary >= facts.timeline().vented()) {
      return List.of();
    }
    Optional<GaugeRatio.Ratio> ratio = facts.ratio().filter(GaugeRatio.Ratio::hasPlateau);
    double left =
        ratio.map(r -> r.remaining().medianIn(secondary - 10, secondary)).orElse(Double.NaN);
    boolean settled =
        facts.loadEnds().stream()
            .anyMatch(end -> end.reached() && end.method() == Endpoint.Method.GAUGE_RATIO_SETTLED);
    left = settled ? 0 : left;
    long wet =
        facts.ends().stream()
            .flatMap(end -> end.point().stream())
            .filter(point -> point > secondary + facts.grid().steps(900))
            .count();
    if (!(left > STILL_MUCH) && wet == 0) {
      return List.of();
    }
    String number =
        left > STILL_MUCH
            ? Math.round(100 * left) + " % of the gauge ratio's plateau remains"
            : wet + " probed vessel(s) still hold ice";
    String channel =
        left > STILL_MUCH ? ratio.orElseThrow().channels() : facts.ends().get(0).trace().name();
    boolean probedDry =
        wet == 0 && facts.ends().stream().filter(end -> end.point().isPresent()).count() > 1;
    return List.of(
        new Finding(
            FindingKind.SECONDARY_BEFORE_END,
            probedDry ? Finding.Severity.WATCH : Finding.Severity.ALARM,
            facts.grid().instant(secondary),
            facts.grid().instant(facts.timeline().vented()),
            left > STILL_MUCH && wet > 0 ? Confidence.HIGH : Confidence.MEDIUM,
            "The shelf is raised while ice remains: "
                + number
                + ". Vessels that still hold ice may melt back at the bottom; look at the slowest "
                + "positions first.",
            List.of("primary drying too short for the slowest vessels"),
            "Hold primary drying until the ratio has fallen, or extend it by a soak.",
            List.of(facts.evidence(channel, secondary, facts.timeline().vented(), number))));
  }
}
