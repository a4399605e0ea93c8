package org.firnline.review;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/**
 * When the load's last ice was gone, by all methods together. The most trusted method that sees the
 * whole load gives the time; the others confirm it or widen its band; no load is dry before its
 * last probed vessel. With thermometers alone the rest of the load is given as much longer as the
 * trade's soak after the last thermometer.
 *
 * <p>Source: ranking of methods after S. M. Patel, T. Doen and M. J. Pikal, AAPS PharmSciTech 11
 * (2010) 73-84, read in abstract; soak of 10 to 15 % of primary drying: from memory.
 */
final class LoadVerdict {
  private static final double AGREE_SHARE = 0.05;
  private static final double SOAK_SHARE = 0.15;
  private static final double USUAL_SOAK_SHARE = 0.07;

  private final Facts facts;
  private final List<String> reasons = new ArrayList<>();

  LoadVerdict(Facts facts) {
    this.facts = facts;
  }

  EndVerdict verdict() {
    List<Endpoint> whole =
        facts.loadEnds().stream()
            .filter(end -> end.reached() && end.method().endsLoad())
            .sorted(
                Comparator.comparing(Endpoint::confidence)
                    .reversed()
                    .thenComparing(Endpoint::method))
            .toList();
    if (!whole.isEmpty()) {
      return reconciled(whole);
    }
    Optional<EndVerdict> left = iceLeft();
    return left.orElseGet(() -> thermometersAlone().orElseGet(this::cannotTell));
  }

  private EndVerdict reconciled(List<Endpoint> whole) {
    Endpoint best = whole.get(0);
    Instant at = best.at().orElseThrow();
    Instant low = best.low().orElseThrow();
    Instant high = best.high().orElseThrow();
    Confidence confidence = best.confidence();
    reasons.add(ReviewWords.say("verdict.best", best.method().label(), spoken(at)));
    boolean confirmed = false;
    for (Endpoint other : whole.subList(1, whole.size())) {
      String when = spoken(other.at().orElseThrow());
      if (agree(best, other)) {
        confirmed = true;
        reasons.add(ReviewWords.say("verdict.agrees", other.method().label(), when));
      } else if (other.confidence() == Confidence.LOW) {
        reasons.add(ReviewWords.say("verdict.ignored", other.method().label(), when));
      } else {
        low = earlier(low, other.low().orElseThrow());
        high = later(high, other.high().orElseThrow());
        confidence = Confidence.LOW;
        reasons.add(ReviewWords.say("verdict.disagrees", other.method().label(), when));
      }
    }
    Optional<Instant> probed = lastProbed();
    if (probed.isPresent() && probed.get().isAfter(at)) {
      at = probed.get();
      high = later(high, lastProbedHigh().orElse(at));
      reasons.add(ReviewWords.say("verdict.probed-later", spoken(at)));
    } else if (probed.isPresent()) {
      confirmed = true;
      reasons.add(ReviewWords.say("verdict.probed-before", spoken(probed.get())));
    }
    boolean surer = confirmed && confidence == Confidence.MEDIUM;
    return new EndVerdict(
        Optional.empty(),
        EndVerdict.State.ICE_GONE,
        Optional.of(at),
        Optional.of(low),
        Optional.of(high),
        surer ? Confidence.HIGH : confidence,
        reasons);
  }

  private boolean agree(Endpoint one, Endpoint other) {
    Duration slack = Duration.ofMillis(Math.round(1_000 * AGREE_SHARE * primary_s()));
    return !other.low().orElseThrow().minus(slack).isAfter(one.high().orElseThrow())
        && !other.high().orElseThrow().plus(slack).isBefore(one.low().orElseThrow());
  }

  /** Vapor still comes when the heat is raised, or a probed vessel still stands cold. */
  private Optional<EndVerdict> iceLeft() {
    Optional<GaugeRatio.Ratio> ratio = facts.ratio().filter(GaugeRatio.Ratio::hasPlateau);
    if (ratio.isPresent()) {
      int to = ratio.get().to();
      double left = ratio.get().remaining().medianIn(to - facts.grid().steps(900), to);
      reasons.add(ReviewWords.say("verdict.ratio-left", Math.round(100 * left)));
    }
    long cold = facts.ends().stream().filter(ThermometerEnds.End::stillBelow).count();
    if (cold > 0) {
      reasons.add(ReviewWords.say("verdict.vessels-left", cold));
    }
    if (reasons.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        EndVerdict.ofLoad(
            EndVerdict.State.ICE_LEFT,
            ratio.isPresent() && cold > 0 ? Confidence.HIGH : Confidence.MEDIUM,
            reasons));
  }

  private Optional<EndVerdict> thermometersAlone() {
    return lastProbed()
        .map(
            last -> {
              double primary_s = seconds(facts.grid().instant(facts.timeline().working()), last);
              reasons.add(ReviewWords.say("verdict.thermometers-alone", spoken(last)));
              reasons.add(ReviewWords.say("verdict.probed-bias"));
              return new EndVerdict(
                  Optional.empty(),
                  EndVerdict.State.ICE_GONE,
                  Optional.of(plus(last, USUAL_SOAK_SHARE * primary_s)),
                  Optional.of(last),
                  Optional.of(plus(last, SOAK_SHARE * primary_s)),
                  Confidence.LOW,
                  reasons);
            });
  }

  private EndVerdict cannotTell() {
    boolean thermometers = !facts.run().vesselThermometers().isEmpty();
    boolean gauge = facts.run().truestGauge().isPresent();
    if (!thermometers) {
      reasons.add(ReviewWords.say("verdict.no-thermometer"));
    } else {
      facts.ends().forEach(end -> reasons.add(end.endpoint().note()));
    }
    if (facts.ratio().isPresent()) {
      reasons.add(ReviewWords.say("verdict.no-plateau"));
    } else {
      reasons.add(ReviewWords.say(gauge ? "verdict.one-gauge" : "verdict.no-gauge"));
    }
    return EndVerdict.ofLoad(EndVerdict.State.CANNOT_TELL, Confidence.LOW, reasons);
  }

  private Optional<Instant> lastProbed() {
    return facts.ends().stream()
        .flatMap(end -> end.endpoint().at().stream())
        .max(Comparator.naturalOrder());
  }

  private Optional<Instant> lastProbedHigh() {
    return facts.ends().stream()
        .filter(end -> end.trace().channel().role() == Role.PRODUCT)
        .flatMap(end -> end.endpoint().high().stream())
        .max(Comparator.naturalOrder());
  }

  private double primary_s() {
    Timeline timeline = facts.timeline();
    return Math.max(1, timeline.secondary() - timeline.working()) * facts.grid().step_s();
  }

  private String spoken(Instant at) {
    return Verdicts.spoken(facts.grid(), at);
  }

  private static double seconds(Instant from, Instant to) {
    return Math.max(0, Duration.between(from, to).toMillis() / 1_000.0);
  }

  private static Instant plus(Instant at, double seconds) {
    return at.plusMillis(Math.round(1_000 * seconds));
  }

  private static Instant earlier(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }
}
