package org.firnline.drying.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.firnline.numerics.DormandPrince5;
import org.firnline.numerics.Swapped;
import org.firnline.numerics.Threshold;

/** The steps of one {@link CoupledDrying} run; belongs to one thread and one run. */
final class LoadMarch {

  private static final double ACCURACY = 1e-9;

  /** At least this many steps in a run, so that peaks between steps are not missed. */
  private static final int LEAST_STEPS = 100;

  /** A front that covers less than this share of its way at once is not followed by depth. */
  private static final double FAST_ENOUGH = 0.2;

  /** A load that gives off less than this share of its first rate has stalled. */
  private static final double NEGLIGIBLE = 1e-9;

  private final LoadFronts fronts;
  private final SharedPressure shared;
  private final boolean[] running;
  private final double[] depths;
  private final double[] ends;
  private final double[] tolerances;
  private final List<LoadState> course = new ArrayList<>();
  private final DormandPrince5 steps;
  private final double[] moments;
  private double time;
  private double startRate;

  /**
   * @param moments times at which a step must end, s; rising
   */
  LoadMarch(LoadFronts fronts, SharedPressure shared, double... moments) {
    this.fronts = fronts;
    this.shared = shared;
    this.moments = moments.clone();
    int size = fronts.size();
    this.running = new boolean[size];
    Arrays.fill(running, true);
    this.depths = new double[size];
    this.ends = new double[size];
    Arrays.fill(ends, Double.POSITIVE_INFINITY);
    this.tolerances = new double[size];
    for (int group = 0; group < size; group++) {
      tolerances[group] = ACCURACY * fronts.thickness(group);
    }
    this.steps = new DormandPrince5(this::slopes, ACCURACY, tolerances);
  }

  List<LoadState> course() {
    return course;
  }

  List<Double> ends() {
    return Arrays.stream(ends).boxed().toList();
  }

  /** Steps until nothing is left to do and says why. */
  LoadOutcome run() {
    note();
    startRate = shared.totalRate();
    Optional<LoadOutcome> stopped = stopped();
    double longest = quickest() / LEAST_STEPS;
    while (stopped.isEmpty()) {
      advance(longest);
      stopped = stopped();
    }
    return stopped.get();
  }

  private Optional<LoadOutcome> stopped() {
    if (remaining() == 0) {
      return Optional.of(new LoadOutcome.Dries(time));
    }
    if (shared.overloaded()) {
      return Optional.of(new LoadOutcome.Overloaded(time));
    }
    if (fronts.melts(running)) {
      return Optional.of(new LoadOutcome.Melts(time));
    }
    return shared.totalRate() > NEGLIGIBLE * startRate
        ? Optional.empty()
        : Optional.of(new LoadOutcome.NothingSublimes());
  }

  /** One step, to where a group runs dry or the run must stop at the latest. */
  private void advance(double longest) {
    double[] before = depths.clone();
    double limit = Math.min(time + longest, nextMoment());
    double next = steps.step(time, limit, depths);
    int dry = firstDry(before);
    while (dry >= 0 && isSlow(dry, before, next)) {
      System.arraycopy(before, 0, depths, 0, depths.length);
      next = steps.step(time, time + (next - time) / 2, depths);
      dry = firstDry(before);
    }
    if (dry >= 0) {
      next = followByDepth(dry, before);
    }
    shared.solve(depths, running);
    if (shared.overloaded() || fronts.melts(running)) {
      next = turningPoint(before, next);
    }
    time = next;
    note();
    if (dry >= 0 && depths[dry] >= fronts.thickness(dry)) {
      running[dry] = false;
      ends[dry] = time;
      note();
    }
  }

  private double nextMoment() {
    return Arrays.stream(moments)
        .filter(moment -> moment > time)
        .findFirst()
        .orElse(Double.MAX_VALUE);
  }

  private boolean isSlow(int group, double[] before, double next) {
    shared.solve(before, running);
    double covered = fronts.speed(group, before[group]) * (next - time);
    return covered < FAST_ENOUGH * (fronts.thickness(group) - before[group]);
  }

  /** The running group that passes its thickness first on a straight line between the states. */
  private int firstDry(double[] before) {
    int first = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int group = 0; group < depths.length; group++) {
      double left = fronts.thickness(group) - before[group];
      if (running[group] && depths[group] >= fronts.thickness(group)) {
        double share = left / (depths[group] - before[group]);
        if (share < least) {
          least = share;
          first = group;
        }
      }
    }
    return first;
  }

  /** Goes on from {@code before} with one group's depth as the clock, to its last ice. */
  private double followByDepth(int group, double[] before) {
    double[] state = before.clone();
    state[group] = time;
    double[] allowed = tolerances.clone();
    allowed[group] = ACCURACY * Math.max(time, 1);
    new DormandPrince5(new Swapped(this::slopes, group), ACCURACY, allowed)
        .march(before[group], fronts.thickness(group), state);
    System.arraycopy(state, 0, depths, 0, depths.length);
    depths[group] = fronts.thickness(group);
    return state[group];
  }

  /** The first moment after the last step at which the run must stop. */
  private double turningPoint(double[] before, double next) {
    double stop = Threshold.of(at -> mustStop(before, at), time, next);
    moveTo(before, stop);
    return stop;
  }

  private boolean mustStop(double[] before, double at) {
    moveTo(before, at);
    shared.solve(depths, running);
    return shared.overloaded() || fronts.melts(running);
  }

  private void moveTo(double[] before, double at) {
    System.arraycopy(before, 0, depths, 0, depths.length);
    new DormandPrince5(this::slopes, ACCURACY, tolerances).march(time, at, depths);
  }

  private void slopes(double at, double[] state, double[] slopes) {
    shared.follow(state, running);
    for (int group = 0; group < slopes.length; group++) {
      slopes[group] = running[group] ? fronts.speed(group, state[group]) : 0;
    }
  }

  private void note() {
    shared.solve(depths, running);
    if (remaining() > 0) {
      course.add(
          new LoadState(time, shared.pressure(), shared.totalRate(), fronts.warmest(running)));
    }
  }

  private int remaining() {
    int count = 0;
    for (boolean still : running) {
      count += still ? 1 : 0;
    }
    return count;
  }

  /** Least time any group would need at its present speed, s. */
  private double quickest() {
    double least = Double.POSITIVE_INFINITY;
    for (int group = 0; group < depths.length; group++) {
      double speed = fronts.speed(group, depths[group]);
      least = speed > 0 ? Math.min(least, fronts.thickness(group) / speed) : least;
    }
    return least;
  }
}
