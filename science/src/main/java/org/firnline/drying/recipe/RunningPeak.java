package org.firnline.drying.recipe;

/**
 * Greatest of a smooth quantity seen only from step to step: where a step is higher than both its
 * neighbors, the top of the parabola through the three counts.
 */
final class RunningPeak {

  private ScheduledRun.Extreme best = new ScheduledRun.Extreme(Double.NEGATIVE_INFINITY, 0);
  private double timeBefore;
  private double before = Double.NaN;
  private double timeNow;
  private double now = Double.NaN;

  /** Forgets the neighbors: the quantity may bend here. */
  void bend() {
    before = Double.NaN;
    now = Double.NaN;
  }

  void see(double time, double value) {
    offer(time, value);
    if (now > before && now > value) {
      double left = (now - before) / (timeNow - timeBefore);
      double right = (value - now) / (time - timeNow);
      double bending = (right - left) / (time - timeBefore);
      double top = (timeBefore + timeNow - left / bending) / 2;
      offer(top, before + (top - timeBefore) * (left + bending * (top - timeNow)));
    }
    timeBefore = timeNow;
    before = now;
    timeNow = time;
    now = value;
  }

  ScheduledRun.Extreme best() {
    return best;
  }

  private void offer(double time, double value) {
    if (value > best.value()) {
      best = new ScheduledRun.Extreme(value, time);
    }
  }
}
