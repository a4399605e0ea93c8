package org.firnline.planning.forecast;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.firnline.numerics.Normal;

/**
 * One possible truth about a load: what is not known about it, and how far out its last and its
 * warmest vessel lie.
 *
 * @param heat standard normal deviate of the heat transfer, shared by all items
 * @param lastShare share of the way through the distribution of the last vessel, 0 to 1
 * @param warmestShare the same of the warmest
 * @param resistance deviate of each item's cake resistance
 * @param critical deviate of each item's critical temperature
 */
record RunDraw(
    double heat,
    double lastShare,
    double warmestShare,
    List<Double> resistance,
    List<Double> critical) {

  private static final int SHARED = 3;

  static int dimensions(int items) {
    return SHARED + 2 * items;
  }

  /** From a point of the unit cube. */
  static RunDraw at(double[] point, int items) {
    List<Double> resistance = new ArrayList<>();
    List<Double> critical = new ArrayList<>();
    for (int item = 0; item < items; item++) {
      resistance.add(Normal.quantile(point[SHARED + 2 * item]));
      critical.add(Normal.quantile(point[SHARED + 2 * item + 1]));
    }
    return new RunDraw(Normal.quantile(point[0]), point[1], point[2], resistance, critical);
  }

  /** Everything as is most plausible. */
  static RunDraw middle(int items) {
    return new RunDraw(
        0, 1.0 / 2, 1.0 / 2, Collections.nCopies(items, 0.0), Collections.nCopies(items, 0.0));
  }

  /** Deviate of the greatest of {@code members} independent normal values. */
  static double extreme(double share, int members) {
    return Normal.quantile(Math.pow(share, 1.0 / members));
  }
}
