package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Grid;

/** Verdicts on the load and on every probed vessel. */
final class Verdicts {
  private final Facts facts;

  private Verdicts(Facts facts) {
    this.facts = facts;
  }

  /** The load first, then the vessels in the order of their channels. */
  static List<EndVerdict> of(Facts facts) {
    Verdicts verdicts = new Verdicts(facts);
    List<EndVerdict> all = new ArrayList<>();
    all.add(new LoadVerdict(facts).verdict());
    facts.ends().forEach(end -> all.add(verdicts.vessel(end)));
    return all;
  }

  private EndVerdict vessel(ThermometerEnds.End end) {
    Optional<String> vessel = Optional.of(end.trace().name());
    Endpoint endpoint = end.endpoint();
    boolean failed =
        facts.faults().stream().anyMatch(f -> f.trace().name().equals(end.trace().name()));
    List<String> reasons = new ArrayList<>();
    reasons.add(endpoint.note());
    if (failed) {
      reasons.add(ReviewWords.say("verdict.sensor-failed"));
    }
    if (endpoint.reached()) {
      if (end.trace().channel().role() == Role.PRODUCT) {
        reasons.add(ReviewWords.say("verdict.probed-bias"));
      }
      return new EndVerdict(
          vessel,
          EndVerdict.State.ICE_GONE,
          endpoint.at(),
          endpoint.low(),
          endpoint.high(),
          failed ? Confidence.LOW : endpoint.confidence(),
          reasons);
    }
    boolean wide = !failed && end.stillBelow();
    return EndVerdict.ofVessel(
        end.trace().name(),
        wide ? EndVerdict.State.ICE_LEFT : EndVerdict.State.CANNOT_TELL,
        wide ? Confidence.MEDIUM : Confidence.LOW,
        reasons);
  }

  /** A moment as a person says it. */
  static String spoken(Grid grid, java.time.Instant at) {
    return Spoken.into((at.toEpochMilli() - grid.instant(0).toEpochMilli()) / 1_000.0);
  }
}
