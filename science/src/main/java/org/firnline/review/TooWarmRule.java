package org.firnline.review;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.firnline.logs.channel.Confidence;

/** Product above the critical temperature while it holds ice. */
final class TooWarmRule implements FindingRule {
  private static final double CLEARLY_OVER_K = 1;
  private static final double LONG_S = 600;

  @Override
  public List<Finding> find(Facts facts) {
    List<Excursion> excursions = facts.excursions();
    if (excursions.isEmpty()) {
      return List.of();
    }
    Instant start =
        excursions.stream().map(Excursion::start).min(Comparator.naturalOrder()).orElseThrow();
    Instant end =
        excursions.stream().map(Excursion::end).max(Comparator.naturalOrder()).orElseThrow();
    double peak = excursions.stream().mapToDouble(Excursion::peak_K).max().orElseThrow();
    double longest = excursions.stream().mapToDouble(Excursion::duration_s).max().orElseThrow();
    double limit = excursions.get(0).limit_K();
    long vessels = excursions.stream().map(Excursion::channel).distinct().count();
    boolean likely = peak - limit > CLEARLY_OVER_K && longest > LONG_S;
    String consequence = likely ? "collapse or melting is likely" : "slight collapse is possible";
    String text =
        "The product stands up to "
            + Spoken.kelvin(peak - limit)
            + " above its critical temperature of "
            + Spoken.temperature(limit)
            + " (peak "
            + Spoken.temperature(peak)
            + ", longest stretch "
            + Spoken.duration(longest)
            + ", "
            + vessels
            + (vessels == 1 ? " probed vessel" : " probed vessels")
            + "): "
            + consequence
            + ". Look at the cakes, and check structure and moisture before you release them.";
    return List.of(
        new Finding(
            FindingKind.PRODUCT_TOO_WARM,
            likely ? Finding.Severity.ALARM : Finding.Severity.WATCH,
            start,
            end,
            likely ? Confidence.HIGH : Confidence.MEDIUM,
            text,
            new ExcursionCauses(facts).ranked(start, end),
            "Lower the shelf or the pressure so that the warmest vessel keeps 2 to 5 K of margin.",
            excursions.stream().map(TooWarmRule::evidence).toList()));
  }

  private static Evidence evidence(Excursion excursion) {
    return new Evidence(
        excursion.channel(),
        excursion.start(),
        excursion.end(),
        "above "
            + Spoken.temperature(excursion.limit_K())
            + " for "
            + Spoken.duration(excursion.duration_s())
            + ", peak "
            + Spoken.temperature(excursion.peak_K()));
  }
}
