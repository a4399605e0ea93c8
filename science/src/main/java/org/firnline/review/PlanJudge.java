package org.firnline.review;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/**
 * Judges a run against its plan, step by step: shelf, pressure, ramp, duration and end. What counts
 * as different: 2 K on the shelf, 15 % on the pressure, a third on the ramp, a tenth and ten
 * minutes on the duration (our own choice, no published source).
 */
final class PlanJudge {
  private static final double SHELF_K = 2;
  private static final double PRESSURE_SHARE = 0.15;
  private static final double RAMP_SHARE = 1.0 / 3;
  private static final double DURATION_SHARE = 0.1;
  private static final double DURATION_S = 600;

  private final Facts facts;

  PlanJudge(Facts facts) {
    this.facts = facts;
  }

  /** Every planned step beside what happened; empty if there is no plan or never a vacuum. */
  List<JudgedStep> judge() {
    List<PlannedStep> plan = facts.context().plan();
    if (plan.isEmpty() || facts.vacuum().isEmpty()) {
      return List.of();
    }
    return new StepPlaces(facts).of(plan).stream().map(this::judged).toList();
  }

  private JudgedStep judged(StepPlaces.Place place) {
    PlannedStep step = place.step();
    OptionalDouble none = OptionalDouble.empty();
    if (!place.seen()) {
      return new JudgedStep(
          step,
          JudgedStep.State.NOT_SEEN,
          Optional.empty(),
          Optional.empty(),
          none,
          none,
          none,
          List.of());
    }
    OptionalDouble shelf = shelf(place);
    OptionalDouble ramp =
        place.ramp().map(this::rate).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    OptionalDouble pressure = pressure(place);
    double duration_s = (place.end() - place.start()) * facts.grid().step_s();
    List<String> settings = new ArrayList<>();
    shelf(step, shelf, place).ifPresent(settings::add);
    pressure(step, pressure, place).ifPresent(settings::add);
    ramp(step, ramp).ifPresent(settings::add);
    List<String> differences = new ArrayList<>(settings);
    Optional<String> length = duration(step, duration_s, place.finished());
    length.ifPresent(differences::add);
    notComparable(step, shelf, pressure).ifPresent(differences::add);
    Instant start = facts.grid().instant(place.start());
    Instant end = facts.grid().instant(place.end());
    return new JudgedStep(
        step,
        state(!settings.isEmpty(), length.isPresent(), place.finished()),
        Optional.of(start),
        Optional.of(end),
        shelf,
        ramp,
        pressure,
        differences);
  }

  private static JudgedStep.State state(boolean settings, boolean length, boolean finished) {
    if (settings) {
      return JudgedStep.State.OTHER_SETTINGS;
    }
    if (!finished) {
      return JudgedStep.State.UNDER_WAY;
    }
    return length ? JudgedStep.State.OTHER_DURATION : JudgedStep.State.AS_PLANNED;
  }

  private double rate(Ramp ramp) {
    double seconds = Math.max(1, ramp.end() - ramp.start()) * facts.grid().step_s();
    return Math.abs(ramp.to_K() - ramp.from_K()) / seconds;
  }

  private OptionalDouble shelf(StepPlaces.Place place) {
    return facts
        .run()
        .first(Role.SHELF)
        .or(() -> facts.run().first(Role.SHELF_SET_POINT))
        .map(trace -> median(trace.signal(), place))
        .orElseGet(OptionalDouble::empty);
  }

  /** Pressure of the hold; a heat-loss gauge alone reads too high in vapor and is not compared. */
  private OptionalDouble pressure(StepPlaces.Place place) {
    return facts
        .run()
        .truestGauge()
        .filter(gauge -> gauge.channel().role() != Role.PRESSURE_THERMAL)
        .map(trace -> median(trace.signal(), place))
        .orElseGet(OptionalDouble::empty);
  }

  private static OptionalDouble median(Signal signal, StepPlaces.Place place) {
    double median = signal.medianIn(place.hold(), place.end());
    return Double.isNaN(median) ? OptionalDouble.empty() : OptionalDouble.of(median);
  }

  private Optional<String> shelf(PlannedStep step, OptionalDouble shelf, StepPlaces.Place place) {
    if (step.shelf_K().isEmpty() || shelf.isEmpty() || isStillRamping(place)) {
      return Optional.empty();
    }
    double off = shelf.getAsDouble() - step.shelf_K().getAsDouble();
    return Math.abs(off) < SHELF_K
        ? Optional.empty()
        : Optional.of(
            ReviewWords.say(
                "plan.shelf",
                Spoken.temperature(shelf.getAsDouble()),
                Spoken.temperature(step.shelf_K().getAsDouble()),
                Spoken.kelvin(Math.abs(off)),
                off > 0 ? 1 : 0));
  }

  /** A log that ends inside a ramp says nothing about the hold behind it. */
  private static boolean isStillRamping(StepPlaces.Place place) {
    return !place.finished() && place.ramp().map(r -> r.end() >= place.end() - 1).orElse(false);
  }

  private static Optional<String> pressure(
      PlannedStep step, OptionalDouble pressure, StepPlaces.Place place) {
    boolean noHold = place.end() - place.hold() < 2;
    if (step.pressure_Pa().isEmpty() || pressure.isEmpty() || noHold) {
      return Optional.empty();
    }
    double share = pressure.getAsDouble() / step.pressure_Pa().getAsDouble() - 1;
    return Math.abs(share) < PRESSURE_SHARE
        ? Optional.empty()
        : Optional.of(
            ReviewWords.say(
                "plan.pressure",
                Spoken.pressure(pressure.getAsDouble()),
                Spoken.pressure(step.pressure_Pa().getAsDouble())));
  }

  private static Optional<String> ramp(PlannedStep step, OptionalDouble ramp) {
    if (step.ramp_K_per_s().isEmpty() || ramp.isEmpty()) {
      return Optional.empty();
    }
    double planned = step.ramp_K_per_s().getAsDouble();
    return Math.abs(ramp.getAsDouble() / planned - 1) < RAMP_SHARE
        ? Optional.empty()
        : Optional.of(
            ReviewWords.say(
                "plan.ramp", Spoken.digits(ramp.getAsDouble() * 60), Spoken.digits(planned * 60)));
  }

  private static Optional<String> duration(PlannedStep step, double actual_s, boolean finished) {
    double off = actual_s - step.duration_s();
    double tolerated = Math.max(DURATION_S, DURATION_SHARE * step.duration_s());
    boolean differs = finished ? Math.abs(off) > tolerated : off > tolerated;
    return differs
        ? Optional.of(
            ReviewWords.say(
                "plan.duration",
                Spoken.duration(actual_s),
                Spoken.duration(step.duration_s()),
                Spoken.duration(Math.abs(off)),
                off > 0 ? 1 : 0))
        : Optional.empty();
  }

  private static Optional<String> notComparable(
      PlannedStep step, OptionalDouble shelf, OptionalDouble pressure) {
    boolean noShelf = step.shelf_K().isPresent() && shelf.isEmpty();
    boolean noPressure = step.pressure_Pa().isPresent() && pressure.isEmpty();
    if (!noShelf && !noPressure) {
      return Optional.empty();
    }
    return Optional.of(
        ReviewWords.say(
            noShelf && noPressure
                ? "plan.no-shelf-no-pressure"
                : noShelf ? "plan.no-shelf" : "plan.no-pressure"));
  }
}
