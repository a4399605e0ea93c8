package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/** The shelf stands above its set point for longer than a control loop takes to settle. */
final class ShelfOvershootRule implements FindingRule {
  private static final double OVER_K = 3;
  private static final double LONG_S = 600;
  private static final double JOIN_S = 600;
  private static final double HUMP_S = 8 * 3600;
  private static final double BACK_K = 2;

  @Override
  public List<Finding> find(Facts facts) {
    Optional<Trace> shelf = facts.run().first(Role.SHELF);
    Optional<Trace> set = facts.run().first(Role.SHELF_SET_POINT);
    if (shelf.isEmpty()) {
      return List.of();
    }
    if (set.isEmpty()) {
      return humps(facts, shelf.get());
    }
    Signal over =
        shelf.get().signal().median(5).with(set.get().signal(), (s, target) -> s - target);
    List<Finding> findings = new ArrayList<>();
    int from = facts.timeline().pump();
    int to = facts.timeline().vented();
    for (Stretch stretch : Stretch.above(over, OVER_K, from, to, facts.grid().steps(JOIN_S))) {
      if (stretch.duration_s(facts.grid()) >= LONG_S) {
        findings.add(finding(facts, shelf.get(), over, stretch));
      }
    }
    return findings;
  }

  /** Without a set point: the shelf warms and comes back to where it was. */
  private static List<Finding> humps(Facts facts, Trace shelf) {
    List<Finding> findings = new ArrayList<>();
    for (Ramp up : facts.ramps()) {
      boolean primary =
          up.start() > facts.timeline().working() && up.start() < facts.timeline().vented();
      Optional<Ramp> down =
          facts.ramps().stream()
              .filter(ramp -> !ramp.isUp() && ramp.start() >= up.end())
              .filter(ramp -> (ramp.end() - up.start()) * facts.grid().step_s() < HUMP_S)
              .filter(ramp -> Math.abs(ramp.to_K() - up.from_K()) < BACK_K)
              .findFirst();
      if (up.isUp() && primary && down.isPresent()) {
        findings.add(hump(facts, shelf, new Stretch(up.start(), down.get().end()), up));
      }
    }
    return findings;
  }

  private static Finding hump(Facts facts, Trace shelf, Stretch stretch, Ramp up) {
    double peak = shelf.signal().median(5).quantileIn(stretch.start(), stretch.end() + 1, 1);
    String most = Spoken.kelvin(peak - up.from_K());
    return new Finding(
        FindingKind.SHELF_OVERSHOOT,
        Finding.Severity.WATCH,
        facts.grid().instant(stretch.start()),
        facts.grid().instant(stretch.end()),
        Confidence.MEDIUM,
        ReviewWords.say("shelf.hump", most, Spoken.duration(stretch.duration_s(facts.grid()))),
        List.of(
            ReviewWords.say("shelf.cause.control"),
            ReviewWords.say("shelf.cause.typed"),
            ReviewWords.say("shelf.cause.recipe")),
        ReviewWords.say("shelf.next"),
        List.of(
            facts.evidence(
                shelf.name(),
                stretch.start(),
                stretch.end(),
                ReviewWords.say("shelf.seen", most))));
  }

  private static Finding finding(Facts facts, Trace shelf, Signal over, Stretch stretch) {
    double most = over.quantileIn(stretch.start(), stretch.end() + 1, 1);
    String length = Spoken.duration(stretch.duration_s(facts.grid()));
    return new Finding(
        FindingKind.SHELF_OVERSHOOT,
        Finding.Severity.WATCH,
        facts.grid().instant(stretch.start()),
        facts.grid().instant(stretch.end()),
        Confidence.HIGH,
        "The shelf runs up to "
            + Spoken.kelvin(most)
            + " above its set point for "
            + length
            + ": the product gets more heat than the recipe asks for. "
            + "Check the product temperatures at that time, and the heater and its sensor.",
        List.of("shelf control or its sensor", "heater relay stuck", "a set point typed by hand"),
        "Have the shelf control checked before the next run.",
        List.of(
            facts.evidence(
                shelf.name(),
                stretch.start(),
                stretch.end(),
                "up to " + Spoken.kelvin(most) + " above the set point")));
  }
}
