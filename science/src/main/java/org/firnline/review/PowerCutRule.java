package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/**
 * The dryer stops though its logger goes on: the collector warms, the pressure rises and the shelf
 * drifts from where it was, all at once.
 *
 * <p>Source: common practice, no published source.
 */
final class PowerCutRule implements FindingRule {
  private static final double SHELF_DRIFTS_K = 1;
  private static final double BEFORE_S = 1200;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    Optional<Trace> shelf = facts.run().first(Role.SHELF);
    Optional<Trace> collector = facts.run().first(Role.COLLECTOR);
    if (shelf.isEmpty() || collector.isEmpty()) {
      return findings;
    }
    for (Stretch warm : CollectorRule.stretches(facts, 0, facts.timeline().vented())) {
      Optional<PressureRise> rise =
          facts.rises().stream()
              .filter(r -> warm.overlaps(new Stretch(r.start(), r.end())))
              .findFirst();
      double drift = drift(facts, shelf.get().signal(), warm);
      if (rise.isPresent() && drift > SHELF_DRIFTS_K) {
        findings.add(finding(facts, collector.get(), rise.get(), warm, drift));
      }
    }
    return findings;
  }

  /** How far the shelf leaves the level it had, less what its set point does meanwhile, K. */
  private static double drift(Facts facts, Signal shelf, Stretch warm) {
    Signal off =
        facts
            .run()
            .first(Role.SHELF_SET_POINT)
            .map(set -> shelf.with(set.signal(), (s, target) -> s - target))
            .orElse(shelf);
    int before = warm.start() - facts.grid().steps(BEFORE_S);
    double level = off.medianIn(before - facts.grid().steps(BEFORE_S), before);
    int to = warm.start() + Math.max(3, (warm.end() - warm.start()) / 2);
    return off.quantileIn(warm.start(), to, 0.9) - level;
  }

  private static Finding finding(
      Facts facts, Trace collector, PressureRise rise, Stretch warm, double drift) {
    int from = Math.min(warm.start(), rise.start());
    int to = Math.max(warm.end(), rise.end());
    double peak = collector.signal().quantileIn(warm.start(), warm.end() + 1, 1);
    return new Finding(
        FindingKind.POWER_CUT,
        Finding.Severity.ALARM,
        facts.grid().instant(from),
        facts.grid().instant(to),
        Confidence.MEDIUM,
        ReviewWords.say(
            "power.finding",
            Spoken.duration((to - from) * facts.grid().step_s()),
            Spoken.into(facts.grid().second(from)),
            Spoken.temperature(peak),
            Spoken.pressure(rise.peak_Pa()),
            Spoken.kelvin(drift),
            WarmUpWords.vessels(facts, from, to)),
        List.of(
            ReviewWords.say("power.cause.cut"),
            ReviewWords.say("power.cause.trip"),
            ReviewWords.say("power.cause.off")),
        ReviewWords.say("power.next"),
        List.of(
            facts.evidence(collector.name(), warm.start(), warm.end(), Spoken.temperature(peak)),
            facts.evidence(
                rise.channel(), rise.start(), rise.end(), Spoken.pressure(rise.peak_Pa()))));
  }
}
