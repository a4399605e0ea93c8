package org.firnline.drying.cycle;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One sensor looking at one quantity of a cycle.
 *
 * @param truth the quantity
 * @param sensor what looks
 * @param noise standard normal numbers
 */
record ChannelReading(ToDoubleFunction<CycleMoment> truth, Sensor sensor, Noise noise) {

  /** A standard normal number for each row. */
  @FunctionalInterface
  interface Noise {
    double at(int row);
  }

  /** What the sensor shows at {@code times}. */
  List<Double> at(List<Double> times, List<CycleMoment> moments) {
    List<Double> shown = new ArrayList<>(times.size());
    int next = 0;
    double time = moments.get(0).time();
    double value = truth.applyAsDouble(moments.get(0));
    double follows = value;
    for (int row = 0; row < times.size(); row++) {
      double wanted = times.get(row);
      while (time < wanted) {
        while (moments.get(next).time() <= time) {
          next++;
        }
        CycleMoment goal = moments.get(next);
        double step = Math.min(wanted, goal.time()) - time;
        double slope = (truth.applyAsDouble(goal) - value) / (goal.time() - time);
        follows = followed(follows, value, slope, step);
        value += slope * step;
        time = Math.min(wanted, goal.time());
      }
      shown.add(sensor.shows(follows, noise.at(row)));
    }
    return shown;
  }

  /** First-order response to a straight line, exact. */
  private double followed(double follows, double value, double slope, double step) {
    double after = value + slope * step;
    if (sensor.lag() == 0) {
      return after;
    }
    double behind = slope * sensor.lag();
    return after - behind + (follows - value + behind) * Math.exp(-step / sensor.lag());
  }
}
