package org.firnline.drying.load;

import java.util.Arrays;
import java.util.List;
import org.firnline.matter.Water;

/**
 * Primary drying of a whole load at constant settings, quasi-steady: every vessel follows its
 * balance, all share the pressure at which load and dryer meet.
 *
 * <p>Steps in time, ends a step exactly where a group runs dry (the load jumps there), and ends the
 * run where a vessel would melt or the dryer carries the load at no pressure. A dryer that holds a
 * set point sits at the first pressure from there up at which it carries the load; one without
 * control at the highest at which the two meet, which is where pump-down leaves it.
 *
 * <p>Assumes the chamber follows at once, since its gas content is seconds of vapor, and what
 * {@link org.firnline.drying.primary.QuasiSteadyFront} assumes.
 *
 * <p>Source: derivation in docs/science.md.
 */
public final class CoupledDrying {

  private CoupledDrying() {}

  /**
   * Runs {@code load} until its ice is gone or it stops.
   *
   * @param moments times that the course shall contain if it gets that far, s; rising
   */
  public static LoadRun run(DryingLoad load, LoadSettings settings, double... moments) {
    if (settings.pressure() instanceof PressureControl.Held held
        && held.setPoint() > Water.TRIPLE_POINT_PRESSURE) {
      List<Double> never = load.groups().stream().map(group -> Double.POSITIVE_INFINITY).toList();
      return new LoadRun(
          new LoadOutcome.AboveTriplePoint(), never, List.of(), List.of(), load.ice());
    }
    var fronts = new LoadFronts(load, settings.shelf());
    var shared = new SharedPressure(fronts, settings);
    List<PressureRoot> roots = shared.roots(new double[fronts.size()], all(fronts.size()));
    var march = new LoadMarch(fronts, shared, moments);
    LoadOutcome outcome = march.run();
    return new LoadRun(outcome, march.ends(), march.course(), roots, load.ice());
  }

  private static boolean[] all(int size) {
    boolean[] all = new boolean[size];
    Arrays.fill(all, true);
    return all;
  }
}
