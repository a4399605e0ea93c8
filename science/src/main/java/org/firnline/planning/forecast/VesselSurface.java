package org.firnline.planning.forecast;

import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.VialTrajectory;
import org.firnline.matter.Water;

/**
 * How a vessel at one setting answers to its heat transfer and resistance: nine trajectories, and
 * between them the parabolas through them in the logarithms of both factors. Good to a few tenths
 * of a percent in time, because a rate bends little within the usual doubt.
 */
final class VesselSurface {

  /** Nodes along each axis: low, middle, high. */
  private static final int NODES = 3;

  private final double heatSpan;
  private final double cakeSpan;
  private final double[] speed = new double[NODES * NODES];
  private final double[] warmest = new double[NODES * NODES];
  private final double[] peakRate = new double[NODES * NODES];
  private final double[] weights = new double[NODES * NODES];

  /**
   * @param heatSpan half width in ln of the heat transfer; 0 where it is known
   * @param cakeSpan half width in ln of the resistance
   */
  VesselSurface(
      VesselGroup group, double shelf_K, double pressure_Pa, double heatSpan, double cakeSpan) {
    this.heatSpan = heatSpan;
    this.cakeSpan = cakeSpan;
    for (int heat = 0; heat < NODES; heat++) {
      for (int cake = 0; cake < NODES; cake++) {
        fill(group, shelf_K, pressure_Pa, heat, cake);
      }
    }
  }

  private void fill(VesselGroup group, double shelf_K, double pressure_Pa, int heat, int cake) {
    int at = heat * NODES + cake;
    int same = (heatSpan == 0 ? 1 : heat) * NODES + (cakeSpan == 0 ? 1 : cake);
    if (same < at) {
      speed[at] = speed[same];
      warmest[at] = warmest[same];
      peakRate[at] = peakRate[same];
      return;
    }
    VialTrajectory path =
        FastPrimaryDrying.run(
            group.vessel().varied(1, Math.exp(cakeSpan * (cake - 1))),
            group.heat().times(Math.exp(heatSpan * (heat - 1))).at(shelf_K, pressure_Pa),
            pressure_Pa);
    boolean melts = Double.isNaN(path.time());
    speed[at] = melts ? 0 : 1 / path.time();
    warmest[at] = melts ? Water.TRIPLE_POINT_TEMPERATURE : path.warmest();
    peakRate[at] = melts ? Double.POSITIVE_INFINITY : path.peakRate();
  }

  /** Makes the other methods answer for these logarithms of both factors. */
  void look(double lnHeat, double lnCake) {
    double[] byHeat = weights(heatSpan == 0 ? 0 : lnHeat / heatSpan);
    double[] byCake = weights(cakeSpan == 0 ? 0 : lnCake / cakeSpan);
    for (int heat = 0; heat < NODES; heat++) {
      for (int cake = 0; cake < NODES; cake++) {
        weights[heat * NODES + cake] = byHeat[heat] * byCake[cake];
      }
    }
  }

  /** Lagrange's parabola through −1, 0 and 1. */
  private static double[] weights(double x) {
    return new double[] {x * (x - 1) / 2, 1 - x * x, x * (x + 1) / 2};
  }

  /** Drying time, s; infinite where nothing sublimes or ice melts. */
  double time() {
    double value = sum(speed);
    return value > 0 && warmest() < Water.TRIPLE_POINT_TEMPERATURE
        ? 1 / value
        : Double.POSITIVE_INFINITY;
  }

  double warmest() {
    return sum(warmest);
  }

  double peakRate() {
    double value = sum(peakRate);
    return Double.isNaN(value) ? Double.POSITIVE_INFINITY : Math.max(0, value);
  }

  private double sum(double[] values) {
    double sum = 0;
    for (int at = 0; at < values.length; at++) {
      sum += weights[at] * values[at];
    }
    return sum;
  }
}
