package org.firnline.review;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/** Why a product got too warm: what else moved at that time, the clearest first. */
final class ExcursionCauses {
  private static final double SHELF_OFF_K = 2;
  private static final double PRESSURE_UP = 1.15;

  private final Facts facts;

  ExcursionCauses(Facts facts) {
    this.facts = facts;
  }

  List<String> ranked(Instant start, Instant end) {
    int from = facts.grid().pointAt(start);
    int to = facts.grid().pointAt(end) + 1;
    List<String> causes = new ArrayList<>();
    shelfAboveSetPoint(from, to).ifPresent(causes::add);
    pressureUp(from, to).ifPresent(causes::add);
    shelfRaised(from).ifPresent(causes::add);
    if (causes.isEmpty()) {
      causes.add("the recipe is too warm for this product: shelf and pressure stand as set");
    }
    return causes;
  }

  private Optional<String> shelfAboveSetPoint(int from, int to) {
    Optional<Trace> shelf = facts.run().first(Role.SHELF);
    Optional<Trace> set = facts.run().first(Role.SHELF_SET_POINT);
    if (shelf.isEmpty() || set.isEmpty()) {
      return Optional.empty();
    }
    Signal over = shelf.get().signal().with(set.get().signal(), (s, target) -> s - target);
    double most = over.quantileIn(from, to, 0.9);
    return most > SHELF_OFF_K
        ? Optional.of("the shelf runs " + Spoken.kelvin(most) + " above its set point")
        : Optional.empty();
  }

  private Optional<String> pressureUp(int from, int to) {
    return facts.rises().stream()
        .filter(rise -> rise.start() < to && rise.end() >= from - facts.grid().steps(1800))
        .filter(rise -> rise.peak_Pa() > PRESSURE_UP * rise.base_Pa())
        .findFirst()
        .map(rise -> "the pressure rises to " + Spoken.pressure(rise.peak_Pa()));
  }

  private Optional<String> shelfRaised(int from) {
    int recent = from - facts.grid().steps(4 * 3600);
    return facts.ramps().stream()
        .filter(ramp -> ramp.isUp() && ramp.end() >= recent && ramp.start() <= from)
        .filter(ramp -> ramp.start() >= facts.timeline().pump())
        .reduce((first, second) -> second)
        .map(ramp -> "the recipe raises the shelf to " + Spoken.temperature(ramp.to_K()));
  }
}
