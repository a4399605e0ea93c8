package org.firnline.drying.pressurerise;

import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.numerics.Fit;
import org.firnline.numerics.LeastSquares;

/**
 * What a recorded pressure rise says about the front, by least squares on {@link PressureRise}.
 *
 * <p>The curve holds two numbers, its end P_i + X/k and its rate k. It cannot tell a leak X from a
 * warmer front: the leak must be known from an empty chamber.
 *
 * @param frontTemperature K, with its standard uncertainty from the scatter of the readings
 * @param rate k, 1/s
 * @param leak X that was taken as known, Pa/s
 */
public record PressureRiseFit(Estimate frontTemperature, Estimate rate, double leak) {

  private static final Provenance TEST = new Provenance.Measured("pressure-rise test");

  private static final int FEWEST_READINGS = 4;

  /**
   * Fits readings at {@code times_s} after the valve shut.
   *
   * @param pressures_Pa as many as times, the first the start pressure; four or more
   * @param leak_Pa_per_s rise of the empty, shut chamber; 0 or more
   * @throws IllegalArgumentException if there are too few readings or they do not bend
   */
  public static PressureRiseFit of(double[] times_s, double[] pressures_Pa, double leak_Pa_per_s) {
    if (times_s.length != pressures_Pa.length || times_s.length < FEWEST_READINGS) {
      throw new IllegalArgumentException(
          "a pressure-rise fit needs four or more readings, each with its time");
    }
    double start = pressures_Pa[0];
    double last = pressures_Pa[pressures_Pa.length - 1];
    double usualRate = 5 / (times_s[times_s.length - 1] - times_s[0]);
    Fit fit =
        LeastSquares.fit(
            p -> rise(times_s, start, p),
            pressures_Pa,
            new double[] {last, usualRate},
            new double[] {last, usualRate});
    double frontPressure = fit.value(0) - leak_Pa_per_s / fit.value(1);
    if (!fit.determined() || !(frontPressure > 0)) {
      throw new IllegalArgumentException(
          "these readings do not bend enough to show the ice front; use a longer test, earlier in"
              + " drying");
    }
    var ice = new WagnerEtAl2011Ice();
    double front = ice.saturationTemperature(frontPressure);
    double slope = frontPressure * ice.logarithmicSlope(front);
    return new PressureRiseFit(
        new Estimate(front, fit.standardError(0) / slope, TEST),
        new Estimate(fit.value(1), fit.standardError(1), TEST),
        leak_Pa_per_s);
  }

  /** R̂ of one vessel, Pa s/kg, if {@code count} share a chamber of {@code volume_m3}. */
  public double vesselResistance(double count, double gas_K, double volume_m3) {
    return count * PressureRise.rate(1, gas_K, volume_m3) / rate.best();
  }

  private static double[] rise(double[] times_s, double start, double[] parameters) {
    double[] pressures = new double[times_s.length];
    for (int i = 0; i < times_s.length; i++) {
      pressures[i] =
          parameters[0] - (parameters[0] - start) * Math.exp(-parameters[1] * times_s[i]);
    }
    return pressures;
  }
}
