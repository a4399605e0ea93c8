package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * A stretch in which the chamber pressure stands above what it should be.
 *
 * @param channel gauge it was read from
 * @param start first point above
 * @param end last point above
 * @param base_Pa what the pressure should be: the set point, else the level just before, Pa
 * @param peak_Pa highest pressure, Pa
 * @param peak where it is highest
 */
record PressureRise(String channel, int start, int end, double base_Pa, double peak_Pa, int peak) {

  /** Ice cannot exist above this pressure of its vapor: the triple point, Pa (IAPWS R14-08). */
  static final double TRIPLE_POINT_PA = 611.657;

  private static final double RAISED = 1.15;
  private static final double SETTLE_S = 1800;
  private static final double BEFORE_S = 3600;
  private static final double JOIN_S = 600;

  /** The level before is looked up anew this often. */
  private static final double BASE_EVERY_S = 300;

  /** A rise this short at the very end is the air that is let in. */
  private static final double VENTING_S = 600;

  PressureRise {
    Objects.requireNonNull(channel, "channel");
  }

  double duration_s(Grid grid) {
    return (end - start + 1) * grid.step_s();
  }

  /**
   * All rises between two points of a run.
   *
   * @param planned_Pa set point of the plan, for a log without one; NaN if there is no plan
   */
  static List<PressureRise> of(Run run, int from, int to, double planned_Pa) {
    Optional<Trace> gauge = run.truestGauge();
    List<PressureRise> rises = new ArrayList<>();
    if (gauge.isEmpty()) {
      return rises;
    }
    Grid grid = run.grid();
    Signal pressure = gauge.get().signal();
    Signal set =
        run.first(Role.PRESSURE_SET_POINT)
            .map(Trace::signal)
            .orElseGet(() -> pressure.map(any -> planned_Pa));
    double noise = pressure.map(Math::log).noise();
    double factor = Math.max(RAISED, Math.exp(6 * noise));
    int join = grid.steps(JOIN_S);
    int i = from + grid.steps(SETTLE_S);
    int block = grid.steps(BASE_EVERY_S);
    int next = 0;
    double base = Double.NaN;
    while (i < to) {
      if (i >= next || set.at(i) > 0) {
        base = base(pressure, set, i, from, grid);
        next = i + block;
      }
      if (!(pressure.at(i) > factor * base)) {
        i++;
        continue;
      }
      int last = i;
      int peak = i;
      for (int j = i; j < to && j - last <= join; j++) {
        last = pressure.at(j) > factor * base ? j : last;
        peak = pressure.at(j) > pressure.at(peak) ? j : peak;
      }
      double top = peakOf(run, pressure.at(peak), i, last);
      boolean venting = last >= to - 2 && (last - i) * grid.step_s() < VENTING_S;
      if (!venting) {
        rises.add(new PressureRise(gauge.get().name(), i, last, base, top, peak));
      }
      i = last + 1;
    }
    return rises;
  }

  private static double base(Signal pressure, Signal set, int i, int from, Grid grid) {
    if (set.at(i) > 0) {
      return set.at(i);
    }
    int before = Math.max(from, i - grid.steps(BEFORE_S));
    return pressure.medianIn(before, Math.max(before + 1, i));
  }

  /** A gauge at its full scale hides the peak: the widest gauge shows it. */
  private static double peakOf(Run run, double seen, int from, int to) {
    double widest =
        run.widestGauge().map(wide -> wide.signal().quantileIn(from, to + 1, 1)).orElse(seen);
    return widest > 3 * seen ? widest : seen;
  }
}
