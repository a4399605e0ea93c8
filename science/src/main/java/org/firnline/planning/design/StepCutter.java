package org.firnline.planning.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.firnline.planning.forecast.AdmissiblePath;
import org.firnline.planning.forecast.DryingProgram;

/**
 * Cuts the ideal trajectory into the few steps that lose least time: dynamic programming over the
 * nodes, every step at the warmest shelf that is admissible all along it and at its best pressure.
 *
 * <p>Source: Bellman, Dynamic Programming (1957); the same as fitting a curve by few constants.
 */
final class StepCutter {

  private final AdmissiblePath path;
  private final double[] pressures;
  private final double[][] time = new double[AdmissiblePath.NODES + 1][AdmissiblePath.NODES + 1];
  private final int[][] chosen = new int[AdmissiblePath.NODES + 1][AdmissiblePath.NODES + 1];

  StepCutter(AdmissiblePath path, double... pressures_Pa) {
    this.path = path;
    this.pressures = pressures_Pa.clone();
    for (int from = 0; from < AdmissiblePath.NODES; from++) {
      for (int to = from + 1; to <= AdmissiblePath.NODES; to++) {
        best(from, to);
      }
    }
  }

  private void best(int from, int to) {
    time[from][to] = Double.POSITIVE_INFINITY;
    for (int pressure = 0; pressure < pressures.length; pressure++) {
      double takes = path.time(from, to, pressure);
      if (takes < time[from][to]) {
        time[from][to] = takes;
        chosen[from][to] = pressure;
      }
    }
  }

  /** The legs of the fastest program with exactly {@code count} of them; none if there is none. */
  List<DryingProgram.Leg> cut(int count) {
    int nodes = AdmissiblePath.NODES;
    double[][] least = new double[count + 1][nodes + 1];
    int[][] from = new int[count + 1][nodes + 1];
    for (double[] row : least) {
      Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
    least[0][0] = 0;
    for (int leg = 1; leg <= count; leg++) {
      for (int to = 1; to <= nodes; to++) {
        for (int start = 0; start < to; start++) {
          double takes = least[leg - 1][start] + time[start][to];
          if (takes < least[leg][to]) {
            least[leg][to] = takes;
            from[leg][to] = start;
          }
        }
      }
    }
    return Double.isFinite(least[count][nodes]) ? legs(from, count) : List.of();
  }

  private List<DryingProgram.Leg> legs(int[][] from, int count) {
    List<DryingProgram.Leg> legs = new ArrayList<>();
    int to = AdmissiblePath.NODES;
    for (int leg = count; leg >= 1; leg--) {
      int start = from[leg][to];
      int pressure = chosen[start][to];
      double lasts = leg == count ? Double.POSITIVE_INFINITY : time[start][to];
      legs.add(
          0,
          new DryingProgram.Leg(
              path.shelf(start, to, pressure), OptionalDouble.of(pressures[pressure]), lasts));
      to = start;
    }
    return legs;
  }
}
