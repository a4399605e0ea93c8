package org.firnline.drying.load;

import java.util.List;
import java.util.Optional;

/**
 * A load drying at constant settings.
 *
 * @param outcome how it ends
 * @param groupEnds time at which each group's ice is gone, s, in the order of the load; infinite
 *     for a group that never ends or had not ended when the run stopped
 * @param course the load from step to step, first and last moment included; empty where it never
 *     starts
 * @param rootsAtStart pressures at which load and dryer would meet at the first moment
 * @param ice ice of the whole load at the start, kg
 */
public record LoadRun(
    LoadOutcome outcome,
    List<Double> groupEnds,
    List<LoadState> course,
    List<PressureRoot> rootsAtStart,
    double ice) {

  public LoadRun {
    groupEnds = List.copyOf(groupEnds);
    course = List.copyOf(course);
    rootsAtStart = List.copyOf(rootsAtStart);
  }

  /** Highest chamber pressure on the way, Pa; empty where the load never starts. */
  public Optional<Double> highestPressure() {
    return course.stream().map(LoadState::pressure).max(Double::compare);
  }

  /** Warmest frozen point of any vessel on the way, K; empty where the load never starts. */
  public Optional<Double> warmest() {
    return course.stream().map(LoadState::warmest).max(Double::compare);
  }

  /** What a careful reader should know. */
  public Optional<String> warning() {
    long stable = rootsAtStart.stream().filter(PressureRoot::stable).count();
    return stable > 1
        ? Optional.of(
            "load and dryer can settle at "
                + stable
                + " chamber pressures: a disturbance can tip the run into the hottest of them")
        : Optional.empty();
  }
}
