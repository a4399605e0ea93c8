package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.review.signal.Signal;

/**
 * Channels that cannot all be what they are called: a collector warmer than the shelf, product
 * warmer than the shelf while ice sublimes, a pressure that no pump reaches over that collector,
 * gauges the wrong way round. Names or units are likely mixed up.
 *
 * <p>Source: physical checks of this project's practice notes; no published source.
 */
final class ContradictionRule implements FindingRule {
  private static final double COLLECTOR_ABOVE_K = 3;
  private static final double PRODUCT_ABOVE_K = 3;
  private static final double HIGHEST_PA = 120_000;
  private static final double GAUGES_TURNED = 0.85;
  private static final double GAUGES_AGREE = 0.95;
  private static final double SETTLE_S = 1800;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    if (facts.vacuum().isEmpty()) {
      return findings;
    }
    int from = facts.timeline().working() + facts.grid().steps(SETTLE_S);
    int to = facts.timeline().secondary();
    if (to - from < 10) {
      return findings;
    }
    collector(facts, from, to).ifPresent(findings::add);
    for (Trace product : facts.run().all(Role.PRODUCT)) {
      product(facts, product, from, to).ifPresent(findings::add);
    }
    pressure(facts, from, to).ifPresent(findings::add);
    gauges(facts, from, to).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> collector(Facts facts, int from, int to) {
    Optional<Trace> collector = facts.run().first(Role.COLLECTOR);
    Optional<Trace> shelf = facts.run().first(Role.SHELF);
    if (collector.isEmpty() || shelf.isEmpty()) {
      return Optional.empty();
    }
    double above = above(collector.get(), shelf.get(), from, to);
    return above > COLLECTOR_ABOVE_K
        ? Optional.of(
            finding(
                facts,
                List.of(collector.get().name(), shelf.get().name()),
                from,
                to,
                ReviewWords.say(
                    "contradiction.collector",
                    collector.get().name(),
                    shelf.get().name(),
                    Spoken.kelvin(above))))
        : Optional.empty();
  }

  private static Optional<Finding> product(Facts facts, Trace product, int from, int to) {
    Optional<Trace> shelf = facts.run().first(Role.SHELF);
    if (shelf.isEmpty()) {
      return Optional.empty();
    }
    double above = above(product, shelf.get(), from, to);
    return above > PRODUCT_ABOVE_K
        ? Optional.of(
            finding(
                facts,
                List.of(product.name(), shelf.get().name()),
                from,
                to,
                ReviewWords.say(
                    "contradiction.product",
                    product.name(),
                    shelf.get().name(),
                    Spoken.kelvin(above))))
        : Optional.empty();
  }

  private static double above(Trace one, Trace other, int from, int to) {
    return one.signal().with(other.signal(), (a, b) -> a - b).medianIn(from, to);
  }

  private static Optional<Finding> pressure(Facts facts, int from, int to) {
    Trace gauge = facts.run().truestGauge().orElseThrow();
    double highest = gauge.signal().quantileIn(0, facts.run().size(), 0.999);
    double usual = gauge.signal().medianIn(from, to);
    double floor =
        facts
            .run()
            .first(Role.COLLECTOR)
            .map(collector -> collector.signal().medianIn(from, to))
            .filter(kelvin -> kelvin > 150 && kelvin < 273)
            .map(kelvin -> new WagnerEtAl2011Ice().pressure(kelvin) / 2)
            .orElse(0.0);
    if (!(highest > HIGHEST_PA) && !(usual < floor)) {
      return Optional.empty();
    }
    String text =
        usual < floor
            ? ReviewWords.say(
                "contradiction.pressure-low",
                gauge.name(),
                Spoken.pressure(usual),
                Spoken.pressure(2 * floor))
            : ReviewWords.say(
                "contradiction.pressure-high", gauge.name(), Spoken.pressure(highest));
    return Optional.of(finding(facts, List.of(gauge.name()), from, to, text));
  }

  /** A heat-loss gauge reads more than the truth in vapor, never so much less. */
  private static Optional<Finding> gauges(Facts facts, int from, int to) {
    if (facts.ratio().isEmpty()) {
      return Optional.empty();
    }
    Signal raw = facts.ratio().get().raw();
    int third = from + (to - from) / 3;
    double early = raw.medianIn(from, third);
    double late = raw.medianIn(to - Math.max(3, (to - from) / 50), to);
    return early < GAUGES_TURNED && late > GAUGES_AGREE
        ? Optional.of(
            finding(
                facts,
                facts.run().all().stream()
                    .filter(t -> t.channel().role().isChamberPressure())
                    .map(Trace::name)
                    .toList(),
                from,
                to,
                ReviewWords.say("contradiction.gauges", Spoken.digits(early))))
        : Optional.empty();
  }

  private static Finding finding(
      Facts facts, List<String> channels, int from, int to, String text) {
    return new Finding(
        FindingKind.CHANNELS_CONTRADICT,
        Finding.Severity.WATCH,
        facts.grid().instant(from),
        facts.grid().instant(to),
        Confidence.MEDIUM,
        text,
        List.of(
            ReviewWords.say("contradiction.cause.swapped"),
            ReviewWords.say("contradiction.cause.unit"),
            ReviewWords.say("contradiction.cause.sensor")),
        ReviewWords.say("contradiction.next"),
        channels.stream()
            .map(name -> facts.evidence(name, from, to, ReviewWords.say("contradiction.seen")))
            .toList());
  }
}
