package org.firnline.drying.leak;

import java.util.List;
import org.firnline.drying.PressureSample;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.numerics.Fit;
import org.firnline.numerics.LeastSquares;

/**
 * Tells leak and outgassing apart: P = p₀ + (Q/V) t + B (1 − e^{−t/τ}) against the straight line.
 *
 * <p>The bend is taken as real when it makes the residual variance at least ten times smaller. It
 * is taken as told apart when τ is shorter than the test and the leak is known to better than a
 * half.
 *
 * <p>Assumes an empty, dry chamber at a steady temperature, the collector shut off or warm: ice and
 * droplets give off vapor of their own.
 *
 * <p>Valid: at least ten samples.
 *
 * <p>Source: Q = V dP/dt; exponential outgassing as the simplest curve with one time (common
 * practice, no published source).
 */
public final class LeakEvaluation {

  private static final int LEAST_SAMPLES = 10;
  private static final double REAL_BEND = 10;
  private static final double KNOWN_LEAK = 0.5;
  private static final double TINY_LEAK = 0.1;

  /** Residuals below this share of the rise are rounding: the line is perfect. */
  private static final double PERFECT = 1e-9;

  /** First guesses of τ as shares of the test. */
  private static final double[] GUESSES = {0.05, 0.2, 0.6};

  /**
   * Evaluates one test.
   *
   * @param samples of the isolated chamber; at least ten
   * @param volume_m3 of the chamber
   * @param name of the test, for the provenance
   */
  public LeakFinding evaluate(List<PressureSample> samples, double volume_m3, String name) {
    PressureSample.requireSeries(samples, LEAST_SAMPLES);
    if (!(volume_m3 > 0)) {
      throw new IllegalArgumentException("chamber volume " + volume_m3 + " m3 is not positive");
    }
    Series series = Series.of(samples);
    Provenance origin = new Provenance.Measured("leak test " + name);
    Fit line = series.line();
    double rise = series.rise();
    if (Math.sqrt(line.sumOfSquares() / samples.size()) <= PERFECT * rise) {
      return steady(line, volume_m3, origin);
    }
    Fit curve = series.curve();
    double lineVariance = line.sumOfSquares() / (samples.size() - 2);
    double curveVariance = curve.sumOfSquares() / (samples.size() - 4);
    if (lineVariance < REAL_BEND * curveVariance) {
      return steady(line, volume_m3, origin);
    }
    return bent(series, curve, volume_m3, origin);
  }

  private static LeakFinding steady(Fit line, double volume_m3, Provenance origin) {
    return new LeakFinding.Steady(scaled(line, 1, volume_m3, origin), scaled(line, 0, 1, origin));
  }

  private static LeakFinding bent(Series series, Fit curve, double volume_m3, Provenance origin) {
    double last = volume_m3 * series.lastSlope();
    double fading = curve.value(3);
    if (curve.value(2) < 0) {
      return new LeakFinding.CannotTell(
          last, "the rise grows steeper, as if chamber or gauge were warming");
    }
    if (!curve.determined() || fading > series.length()) {
      return new LeakFinding.CannotTell(
          last, "the bend is slower than the test; a longer test may tell");
    }
    Estimate leak = scaled(curve, 1, volume_m3, origin);
    double mean = volume_m3 * series.rise() / series.length();
    if (!(leak.spread() <= KNOWN_LEAK * Math.abs(leak.best())) && !isTiny(leak, mean)) {
      return new LeakFinding.CannotTell(
          last, "the readings scatter too much to tell leak from outgassing");
    }
    return new LeakFinding.LeakAndOutgassing(
        leak,
        scaled(curve, 2, 1, origin),
        scaled(curve, 3, 1, origin),
        scaled(curve, 0, 1, origin));
  }

  /** A leak far below the mean rise need not be known to a share of itself. */
  private static boolean isTiny(Estimate leak, double mean) {
    return Math.abs(leak.best()) + leak.spread() < TINY_LEAK * mean;
  }

  private static Estimate scaled(Fit fit, int index, double factor, Provenance origin) {
    return new Estimate(
        factor * fit.value(index), Math.abs(factor) * fit.standardError(index), origin);
  }

  /** Samples as arrays, time from the first. */
  private static final class Series {

    private final double[] times;
    private final double[] pressures;

    private Series(double[] times, double[] pressures) {
      this.times = times;
      this.pressures = pressures;
    }

    static Series of(List<PressureSample> samples) {
      double first = samples.get(0).time();
      return new Series(
          samples.stream().mapToDouble(sample -> sample.time() - first).toArray(),
          samples.stream().mapToDouble(PressureSample::pressure).toArray());
    }

    double length() {
      return times[times.length - 1];
    }

    double rise() {
      return Math.abs(pressures[pressures.length - 1] - pressures[0]) + Double.MIN_NORMAL;
    }

    /** Slope over the last quarter, Pa/s. */
    double lastSlope() {
      int from = times.length - Math.max(2, times.length / 4);
      int last = times.length - 1;
      return (pressures[last] - pressures[from]) / (times[last] - times[from]);
    }

    Fit line() {
      return LeastSquares.fit(
          line -> predicted(line[0], line[1], 0, 1),
          pressures,
          new double[] {pressures[0], rise() / length()},
          new double[] {rise(), rise() / length()});
    }

    Fit curve() {
      Fit best = curve(GUESSES[0]);
      for (int guess = 1; guess < GUESSES.length; guess++) {
        Fit other = curve(GUESSES[guess]);
        best = other.sumOfSquares() < best.sumOfSquares() ? other : best;
      }
      return best;
    }

    private Fit curve(double share) {
      return LeastSquares.fit(
          all -> predicted(all[0], all[1], all[2], all[3]),
          pressures,
          new double[] {
            pressures[0], lastSlope(), rise() - lastSlope() * length(), share * length()
          },
          new double[] {rise(), rise() / length(), rise(), length()});
    }

    private double[] predicted(double start, double slope, double bend, double fading) {
      double[] predicted = new double[times.length];
      for (int i = 0; i < times.length; i++) {
        double gone = -Math.expm1(-times[i] / fading);
        predicted[i] = start + slope * times[i] + bend * gone;
      }
      return predicted;
    }
  }
}
