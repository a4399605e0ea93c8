package org.firnline.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/**
 * The phases of a run as grid points. Freezing ends when the pump starts, evacuation when pressure
 * reaches its working level, primary drying when the shelf is raised for good after (or without
 * waiting for) the end of ice, secondary drying when air is let in.
 *
 * @param start first point of the log
 * @param pump the pump starts; equal to {@code start} if the log starts under way
 * @param working pressure reaches its working level
 * @param secondary heat is raised for secondary drying; equal to {@code vented} if it never is
 * @param vented air is let in; the last point if the log ends before
 * @param end last point of the log
 * @param secondaryConfidence how sure the start of secondary drying is
 * @param secondaryReason what it was read from, in words
 */
record Timeline(
    int start,
    int pump,
    int working,
    int secondary,
    int vented,
    int end,
    Confidence secondaryConfidence,
    String secondaryReason) {

  /** A shelf this warm is past any usual primary drying: -5 °C. */
  private static final double WARM_K = 268.15;

  private static final double SAME_LEVEL_K = 2;
  private static final double EARLY_S = 600;

  Timeline {
    Objects.requireNonNull(secondaryConfidence, "secondaryConfidence");
    Objects.requireNonNull(secondaryReason, "secondaryReason");
  }

  /** A run without a shelf whose load gives off vapor again after its ice is gone. */
  static Timeline of(Run run, Vacuum vacuum, int vaporAgain) {
    int last = run.size() - 1;
    return new Timeline(
        0,
        vacuum.pumpStart(),
        vacuum.working(),
        vaporAgain,
        Math.min(vacuum.vented(), last),
        last,
        Confidence.MEDIUM,
        "vapor comes again after the ice is gone: the shelf is raised");
  }

  static Timeline of(
      Run run,
      Vacuum vacuum,
      List<Ramp> ramps,
      List<ThermometerEnds.End> ends,
      List<Integer> pressureFalls) {
    int last = run.size() - 1;
    int vented = Math.min(vacuum.vented(), last);
    List<Integer> vesselEnds = ends.stream().flatMap(end -> end.point().stream()).toList();
    Optional<Ramp> ramp = heatRamp(run, vacuum, ramps, vesselEnds);
    if (ramp.isPresent()) {
      return new Timeline(
          0,
          vacuum.pumpStart(),
          vacuum.working(),
          ramp.get().start(),
          vented,
          last,
          Confidence.HIGH,
          "the shelf is raised to " + Spoken.temperature(ramp.get().to_K()));
    }
    Optional<Integer> dry =
        (pressureFalls.isEmpty() ? vesselEnds : pressureFalls)
            .stream().max(Comparator.naturalOrder());
    if (dry.isPresent()) {
      return new Timeline(
          0,
          vacuum.pumpStart(),
          vacuum.working(),
          Math.min(dry.get(), vented),
          vented,
          last,
          Confidence.MEDIUM,
          "no heat is raised; the ice is gone");
    }
    return new Timeline(
        0,
        vacuum.pumpStart(),
        vacuum.working(),
        vented,
        vented,
        last,
        Confidence.MEDIUM,
        "the log shows no secondary drying");
  }

  private static Optional<Ramp> heatRamp(
      Run run, Vacuum vacuum, List<Ramp> ramps, List<Integer> vesselEnds) {
    List<Ramp> up = new ArrayList<>();
    for (Ramp ramp : ramps) {
      boolean inVacuum = ramp.start() >= vacuum.pumpStart() && ramp.start() < vacuum.vented();
      boolean fallsBack =
          ramps.stream()
              .anyMatch(
                  later ->
                      !later.isUp()
                          && later.start() >= ramp.end()
                          && later.start() < vacuum.vented()
                          && later.to_K() < ramp.from_K() + SAME_LEVEL_K);
      if (ramp.isUp() && inVacuum && !fallsBack) {
        up.add(ramp);
      }
    }
    if (up.isEmpty()) {
      return Optional.empty();
    }
    Ramp highest = up.get(up.size() - 1);
    int early = run.grid().steps(EARLY_S);
    if (!vesselEnds.isEmpty()) {
      int lastEnd = Collections.max(vesselEnds);
      Optional<Ramp> after =
          up.stream()
              .filter(ramp -> ramp.start() >= lastEnd - early)
              .filter(ramp -> ramp.to_K() > WARM_K || ramp.equals(highest))
              .findFirst();
      if (after.isPresent()) {
        return after;
      }
    }
    return up.size() > 1 && highest.to_K() > WARM_K ? Optional.of(highest) : Optional.empty();
  }

  /** The phases as answers. */
  List<Phase> phases(Run run, Vacuum vacuum) {
    List<Phase> phases = new ArrayList<>();
    int first = vacuum.sawPumpStart() && pump > run.grid().steps(120) ? pump : start;
    if (first > start) {
      add(
          phases,
          run,
          Phase.Name.FREEZING,
          start,
          pump,
          vacuum.confidence(),
          "until the pump starts");
    }
    if (working > first) {
      add(
          phases,
          run,
          Phase.Name.EVACUATION,
          first,
          working,
          vacuum.confidence(),
          "until the pressure settles near " + Spoken.pressure(vacuum.working_Pa()));
    }
    add(
        phases,
        run,
        Phase.Name.PRIMARY_DRYING,
        working,
        secondary,
        secondaryConfidence,
        "until " + secondaryReason);
    if (vented > secondary) {
      add(
          phases,
          run,
          Phase.Name.SECONDARY_DRYING,
          secondary,
          vented,
          secondaryConfidence,
          vacuum.sawVent(run.size()) ? "until air is let in" : "until the log ends");
    }
    if (vacuum.sawVent(run.size())) {
      add(
          phases,
          run,
          Phase.Name.BACKFILL,
          vented,
          end,
          vacuum.confidence(),
          "the pressure rises for good");
    }
    return phases;
  }

  private static void add(
      List<Phase> phases,
      Run run,
      Phase.Name name,
      int from,
      int to,
      Confidence confidence,
      String reason) {
    phases.add(
        new Phase(name, run.grid().instant(from), run.grid().instant(to), confidence, reason));
  }
}
