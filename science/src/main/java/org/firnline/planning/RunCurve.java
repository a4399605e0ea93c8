package org.firnline.planning;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FrontState;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;

/** One vial's way through primary drying, by time: what a chart shows. */
final class RunCurve {

  private static final int DEPTHS = 60;

  private final double[] times = new double[DEPTHS + 1];
  private final double[] warmest = new double[DEPTHS + 1];
  private final double[] rates = new double[DEPTHS + 1];

  private RunCurve() {}

  /** The curve of a vial that dries at {@code hold}; Simpson's rule between neighboring depths. */
  static RunCurve of(VialCase vial, Hold hold) {
    RunCurve curve = new RunCurve();
    DryingVessel vessel = vial.vessel();
    HeatSupply supply = vial.supply(hold);
    QuasiSteadyFront front = new QuasiSteadyFront();
    double thickness = vessel.geometry().thickness();
    double step = thickness / DEPTHS;
    for (int i = 0; i <= DEPTHS; i++) {
      FrontState state = front.at(vessel, supply, hold.pressure_Pa(), i * step);
      curve.warmest[i] = state.warmest();
      curve.rates[i] = state.rate();
      if (i > 0) {
        double middle = front.at(vessel, supply, hold.pressure_Pa(), (i - 0.5) * step).rate();
        double slowness = (1 / curve.rates[i - 1] + 4 / middle + 1 / state.rate()) / 6;
        curve.times[i] =
            curve.times[i - 1] + step * vessel.geometry().icePerDepth(i * step) * slowness;
      }
    }
    return curve;
  }

  double end() {
    return times[DEPTHS];
  }

  double warmestAt(double time) {
    return at(warmest, time);
  }

  /** The rate of this vial at {@code time}; 0 once it is dry. */
  double rateAt(double time) {
    return time > end() ? 0 : at(rates, time);
  }

  double driedAt(double time) {
    double place = place(time);
    return place / DEPTHS;
  }

  private double at(double[] series, double time) {
    double place = place(time);
    int below = Math.min(DEPTHS - 1, (int) place);
    return series[below] + (place - below) * (series[below + 1] - series[below]);
  }

  private double place(double time) {
    if (time >= end()) {
      return DEPTHS;
    }
    int below = 0;
    while (below < DEPTHS - 1 && times[below + 1] <= time) {
      below++;
    }
    return below + (time - times[below]) / (times[below + 1] - times[below]);
  }

  /** {@code count} evenly spaced times from 0 to {@code end}. */
  static List<Double> timesUntil(double end, int count) {
    List<Double> times = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      times.add(end * i / (count - 1));
    }
    return times;
  }
}
