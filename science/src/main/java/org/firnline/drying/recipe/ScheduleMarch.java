package org.firnline.drying.recipe;

import java.util.ArrayList;
import java.util.List;
import org.firnline.matter.Water;
import org.firnline.numerics.DormandPrince5;
import org.firnline.numerics.Swapped;
import org.firnline.numerics.Threshold;

/** The steps of one {@link ScheduledDrying} run, from bend to bend of the schedule. */
final class ScheduleMarch {

  private static final double ACCURACY = 1e-10;

  /** Longest step, s; peaks between steps are then found by their parabola. */
  private static final double LONGEST_STEP_S = 600;

  /** Greatest share of the thickness dried in a step, for the same reason. */
  private static final double LARGEST_SHARE = 0.01;

  /** A front that covers less than this share of its way at once is not followed by depth. */
  private static final double FAST_ENOUGH = 0.2;

  private final VesselModel model;
  private final double longestTime;
  private final double[] state;
  private final DormandPrince5 steps;
  private final List<ScheduledRun.Moment> course = new ArrayList<>();
  private final RunningPeak warmest = new RunningPeak();
  private final RunningPeak peakRate = new RunningPeak();
  private double time;

  ScheduleMarch(VesselModel model, double longestTime_s) {
    this.model = model;
    this.longestTime = longestTime_s;
    this.state = model.start();
    this.steps = new DormandPrince5(model, ACCURACY, model.tolerances());
  }

  ScheduledRun run(double... bends) {
    ScheduledRun.Ending ending = ScheduledRun.Ending.UNFINISHED;
    for (double bend : bends) {
      if (bend > time && ending == ScheduledRun.Ending.UNFINISHED) {
        ending = segment(Math.min(bend, longestTime));
      }
    }
    if (ending == ScheduledRun.Ending.UNFINISHED) {
      ending = segment(longestTime);
    }
    return new ScheduledRun(ending, time, warmest.best(), peakRate.best(), course);
  }

  private ScheduledRun.Ending segment(double end) {
    model.holdBefore(end);
    warmest.bend();
    peakRate.bend();
    ScheduledRun.Moment now = note();
    while (time < end && !melts(now)) {
      double[] before = state.clone();
      double next = steps.step(time, Math.min(end, time + longestStep(before)), state);
      while (isDry() && isSlow(before, next)) {
        restore(before);
        next = steps.step(time, time + (next - time) / 2, state);
      }
      boolean dry = isDry();
      next = dry ? followByDepth(before) : next;
      if (melts(model.moment(next, state))) {
        next = meltingTime(before, next);
        dry = false;
      }
      time = next;
      now = note();
      if (dry) {
        return ScheduledRun.Ending.DRIES;
      }
    }
    return melts(now) ? ScheduledRun.Ending.MELTS : ScheduledRun.Ending.UNFINISHED;
  }

  private double longestStep(double[] now) {
    double speed = speed(now);
    return speed * LONGEST_STEP_S > LARGEST_SHARE * model.thickness()
        ? LARGEST_SHARE * model.thickness() / speed
        : LONGEST_STEP_S;
  }

  private double speed(double[] now) {
    double[] slopes = new double[now.length];
    model.slopes(time, now, slopes);
    return slopes[0];
  }

  private boolean isDry() {
    return state[0] >= model.thickness();
  }

  private boolean isSlow(double[] before, double next) {
    return speed(before) * (next - time) < FAST_ENOUGH * (model.thickness() - before[0]);
  }

  /** Goes on from {@code before} with the depth as the clock, to the last ice. */
  private double followByDepth(double[] before) {
    double[] swapped = before.clone();
    swapped[0] = time;
    double[] allowed = model.tolerances();
    allowed[0] = ACCURACY * Math.max(1, time);
    new DormandPrince5(new Swapped(model, 0), ACCURACY, allowed)
        .march(before[0], model.thickness(), swapped);
    restore(swapped);
    state[0] = model.thickness();
    return swapped[0];
  }

  private double meltingTime(double[] before, double next) {
    return Threshold.of(
        at -> {
          restore(before);
          new DormandPrince5(model, ACCURACY, model.tolerances()).march(time, at, state);
          return melts(model.moment(at, state));
        },
        time,
        next);
  }

  private void restore(double[] other) {
    System.arraycopy(other, 0, state, 0, state.length);
  }

  private static boolean melts(ScheduledRun.Moment moment) {
    return moment.warmest() > Water.TRIPLE_POINT_TEMPERATURE;
  }

  private ScheduledRun.Moment note() {
    ScheduledRun.Moment now = model.moment(time, state);
    course.add(now);
    warmest.see(time, now.warmest());
    peakRate.see(time, now.rate());
    return now;
  }
}
