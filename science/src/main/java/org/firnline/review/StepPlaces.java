package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.lab.RecipePhase;

/**
 * Where the planned steps lie in a log. A step that moves the shelf starts at the shelf's next
 * change in that direction; the first step of a phase starts with its phase; any other starts when
 * the step before it was planned to end.
 */
final class StepPlaces {
  /** Smaller changes of the shelf are not told from a hold. */
  private static final double CHANGE_K = 3;

  private static final double EARLY_S = 1800;

  /**
   * A step in the log.
   *
   * @param step what was planned
   * @param ramp the change of the shelf that starts it; empty if there is none
   * @param start first point; -1 if the log does not show it
   * @param end first point of the next step; -1 if the log does not show it
   * @param finished whether the log goes on behind it
   */
  record Place(PlannedStep step, Optional<Ramp> ramp, int start, int end, boolean finished) {
    boolean seen() {
      return start >= 0;
    }

    /** First point of the hold behind the ramp; never behind the last quarter of the step. */
    int hold() {
      int quarter = start + 3 * (end - start) / 4;
      int half = start + (end - start) / 2;
      return ramp.map(r -> Math.min(r.end(), quarter)).orElse(half);
    }
  }

  private final Facts facts;
  private final Timeline timeline;

  StepPlaces(Facts facts) {
    this.facts = facts;
    this.timeline = facts.timeline();
  }

  List<Place> of(List<PlannedStep> steps) {
    List<Optional<Ramp>> ramps = new ArrayList<>();
    int[] starts = new int[steps.size()];
    for (int k = 0; k < steps.size(); k++) {
      Optional<Ramp> ramp = ramp(steps, k, k == 0 ? 0 : starts[k - 1] + 1);
      ramps.add(ramp);
      int before = k == 0 ? 0 : starts[k - 1];
      int step = k;
      starts[k] = ramp.map(Ramp::start).orElseGet(() -> start(steps, step, before));
    }
    List<Place> places = new ArrayList<>();
    for (int k = 0; k < steps.size(); k++) {
      int end = end(steps, starts, k);
      boolean seen = starts[k] >= 0 && end > starts[k];
      boolean finished = end < timeline.end() || closes(steps.get(k).phase());
      places.add(
          new Place(steps.get(k), ramps.get(k), seen ? starts[k] : -1, seen ? end : -1, finished));
    }
    return places;
  }

  /** A backfill, or a log that ends with the air let in, has no step behind it. */
  private boolean closes(RecipePhase phase) {
    return phase == RecipePhase.BACKFILL && timeline.vented() < timeline.end();
  }

  private Optional<Ramp> ramp(List<PlannedStep> steps, int k, int after) {
    PlannedStep step = steps.get(k);
    Optional<Double> before = shelfBefore(steps, k);
    boolean unseen = phaseEnd(step.phase()) <= phaseStart(step.phase());
    if (step.shelf_K().isEmpty() || before.isEmpty() || unseen) {
      return Optional.empty();
    }
    double change = step.shelf_K().getAsDouble() - before.get();
    int early = facts.grid().steps(EARLY_S);
    return Math.abs(change) < CHANGE_K
        ? Optional.empty()
        : facts.ramps().stream()
            .filter(ramp -> ramp.isUp() == change > 0 && ramp.start() >= after)
            .filter(ramp -> ramp.start() >= phaseStart(step.phase()) - early)
            .filter(ramp -> ramp.start() < phaseEnd(step.phase()))
            .findFirst();
  }

  private static Optional<Double> shelfBefore(List<PlannedStep> steps, int k) {
    for (int i = k - 1; i >= 0; i--) {
      if (steps.get(i).shelf_K().isPresent()) {
        return Optional.of(steps.get(i).shelf_K().getAsDouble());
      }
    }
    return Optional.empty();
  }

  private int start(List<PlannedStep> steps, int k, int before) {
    RecipePhase phase = steps.get(k).phase();
    if (phaseEnd(phase) <= phaseStart(phase)) {
      return -1;
    }
    boolean first = k == 0 || steps.get(k - 1).phase() != phase;
    if (first || before < 0) {
      return phaseStart(phase);
    }
    int planned = before + facts.grid().steps(steps.get(k - 1).duration_s());
    return planned < phaseEnd(phase) ? planned : -1;
  }

  private int end(List<PlannedStep> steps, int[] starts, int k) {
    RecipePhase phase = steps.get(k).phase();
    for (int i = k + 1; i < starts.length; i++) {
      if (starts[i] >= 0) {
        return starts[i];
      }
    }
    return phaseEnd(phase);
  }

  private int phaseStart(RecipePhase phase) {
    return switch (phase) {
      case FREEZING -> timeline.start();
      case EVACUATION -> timeline.pump();
      case PRIMARY_DRYING -> timeline.working();
      case SECONDARY_DRYING -> timeline.secondary();
      case BACKFILL -> timeline.vented();
    };
  }

  private int phaseEnd(RecipePhase phase) {
    return switch (phase) {
      case FREEZING -> timeline.pump();
      case EVACUATION -> timeline.working();
      case PRIMARY_DRYING -> timeline.secondary();
      case SECONDARY_DRYING -> timeline.vented();
      case BACKFILL -> timeline.end();
    };
  }
}
