package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/** The collector stands warmer than in its first hours under vacuum. */
final class CollectorRule implements FindingRule {
  private static final double WARMER_K = 5;
  private static final double LONG_S = 600;
  private static final double SETTLE_S = 1800;
  private static final double FIRST_HOURS_S = 3 * 3600;
  private static final double JOIN_S = 1200;

  /** Water ice hardly holds vapor back any more: -30 °C. */
  private static final double MUCH_TOO_WARM_K = 243.15;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    if (facts.vacuum().isEmpty()) {
      return findings;
    }
    for (Stretch stretch : stretches(facts, 0, facts.timeline().vented())) {
      findings.add(finding(facts, stretch));
    }
    return findings;
  }

  /** Stretches of a warm collector under vacuum that touch a range of points. */
  static List<Stretch> stretches(Facts facts, int from, int to) {
    Optional<Trace> collector = facts.run().first(Role.COLLECTOR);
    if (collector.isEmpty() || facts.vacuum().isEmpty()) {
      return List.of();
    }
    Signal signal = collector.get().signal().median(5);
    int start = facts.timeline().working() + facts.grid().steps(SETTLE_S);
    // The last minutes belong to the venting.
    int end = facts.timeline().vented() - facts.grid().steps(120);
    double usual = signal.medianIn(start, Math.min(end, start + facts.grid().steps(FIRST_HOURS_S)));
    double limit = usual + Math.max(WARMER_K, 6 * signal.noise());
    Stretch range = new Stretch(from, to);
    return Stretch.above(signal, limit, start, end, facts.grid().steps(JOIN_S)).stream()
        .filter(stretch -> stretch.duration_s(facts.grid()) >= LONG_S)
        .filter(stretch -> stretch.overlaps(range))
        .toList();
  }

  private static Finding finding(Facts facts, Stretch stretch) {
    Trace collector = facts.run().first(Role.COLLECTOR).orElseThrow();
    double peak = collector.signal().median(5).quantileIn(stretch.start(), stretch.end() + 1, 1);
    boolean pressureToo =
        facts.rises().stream()
            .anyMatch(rise -> stretch.overlaps(new Stretch(rise.start(), rise.end())));
    boolean bad = peak > MUCH_TOO_WARM_K || pressureToo;
    return new Finding(
        FindingKind.COLLECTOR_WARMING,
        bad ? Finding.Severity.ALARM : Finding.Severity.WATCH,
        facts.grid().instant(stretch.start()),
        facts.grid().instant(stretch.end()),
        Confidence.HIGH,
        "The collector warms to "
            + Spoken.temperature(peak)
            + " for "
            + Spoken.duration(stretch.duration_s(facts.grid()))
            + (pressureToo ? ", and the pressure rises with it" : "")
            + ": it holds back less vapor, and the product may get warmer. Check the ice on it and "
            + "the compressor.",
        List.of(
            "compressor stopped or overheated",
            "collector full of ice",
            "more vapor than it is made for",
            "room too warm"),
        "Defrost before the run, load less, or have the refrigeration checked.",
        List.of(
            facts.evidence(
                collector.name(),
                stretch.start(),
                stretch.end(),
                "warms to " + Spoken.temperature(peak))));
  }
}
