package org.firnline.drying.pressurerise;

import java.util.List;
import java.util.Optional;
import org.firnline.drying.PressureSample;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;
import org.firnline.numerics.Fit;
import org.firnline.numerics.LeastSquares;

/**
 * Reads front temperature and cake resistance from a pressure-rise test by least squares.
 *
 * <p>The leak is an input, known from a leak test: over ice that keeps its temperature the rise
 * depends on P_i + X/k and k alone, so that no test can tell a leak from slightly warmer ice. Where
 * a model follows the warming of the ice the leak may be left free, and often is not determined.
 *
 * <p>Assumes that residuals are independent and equal; standard errors are those of fit and leak
 * and leave out the doubt about chamber volume, gas temperature and number of vessels that still
 * hold ice, which all go straight into the resistance.
 *
 * <p>Valid: several seconds of rise by at least a pascal, samples at least every second.
 *
 * <p>Source: non-linear least squares on a {@link RiseModel}; derivation in docs/science.md.
 */
public final class RiseEvaluation {

  private static final int LEAST_SAMPLES = 6;
  private static final double COLDEST_FRONT = 180;
  private static final double LEAST_RESISTANCE_SHARE = 1e-3;

  private final RiseModel model;
  private final IceVaporPressure ice = new WagnerEtAl2011Ice();

  /**
   * @param model the rise to fit
   */
  public RiseEvaluation(RiseModel model) {
    this.model = model;
  }

  /**
   * The best state with a known leak; the doubt about the leak goes into both answers.
   *
   * @param samples times since the valve shut; at least six, the first at or after 0
   * @param leak X from a leak test, Pa/s
   * @param name of the test, for the provenance
   * @return empty if the samples cannot tell the two apart
   */
  public Optional<RiseEstimate> evaluate(
      RiseSetup setup, List<PressureSample> samples, Estimate leak, String name) {
    Series series = Series.of(samples, setup, ice);
    Fit fit = fit(setup, series, leak.best());
    if (!fit.determined()) {
      return Optional.empty();
    }
    Fit shifted = leak.spread() == 0 ? fit : fit(setup, series, leak.shifted(1));
    Provenance origin = new Provenance.Measured("pressure-rise test " + name);
    return Optional.of(
        new RiseEstimate(
            estimate(fit, shifted, 0, series.front, 1, origin),
            estimate(fit, shifted, 1, 0, series.resistance, origin),
            leak,
            misfit(fit, samples)));
  }

  /**
   * The best state with the leak left free.
   *
   * @return empty if the samples cannot tell the three apart
   */
  public Optional<RiseEstimate> evaluateWithFreeLeak(
      RiseSetup setup, List<PressureSample> samples, String name) {
    Series series = Series.of(samples, setup, ice);
    Fit fit =
        LeastSquares.fit(
            values ->
                model.pressures(setup, series.state(values[0], values[1], values[2]), series.times),
            series.pressures,
            new double[] {0, 1, 0},
            new double[] {1, 1, series.steepest});
    if (!fit.determined()) {
      return Optional.empty();
    }
    Provenance origin = new Provenance.Measured("pressure-rise test " + name);
    return Optional.of(
        new RiseEstimate(
            estimate(fit, fit, 0, series.front, 1, origin),
            estimate(fit, fit, 1, 0, series.resistance, origin),
            estimate(fit, fit, 2, 0, 1, origin),
            misfit(fit, samples)));
  }

  private Fit fit(RiseSetup setup, Series series, double leak) {
    return LeastSquares.fit(
        values -> model.pressures(setup, series.state(values[0], values[1], leak), series.times),
        series.pressures,
        new double[] {0, 1},
        new double[] {1, 1});
  }

  private static Estimate estimate(
      Fit fit, Fit shifted, int index, double offset, double factor, Provenance origin) {
    double byLeak = shifted.value(index) - fit.value(index);
    double spread = factor * Math.hypot(fit.standardError(index), byLeak);
    return new Estimate(offset + factor * fit.value(index), spread, origin);
  }

  private static double misfit(Fit fit, List<PressureSample> samples) {
    return Math.sqrt(fit.sumOfSquares() / samples.size());
  }

  /** The samples and a first guess: parameters count from there, so that they are of order 1. */
  private static final class Series {

    private final double[] times;
    private final double[] pressures;
    private final double steepest;
    private final double front;
    private final double resistance;

    private Series(
        double[] times, double[] pressures, double steepest, double front, double resistance) {
      this.times = times;
      this.pressures = pressures;
      this.steepest = steepest;
      this.front = front;
      this.resistance = resistance;
    }

    /** The front as warm as the last pressure, the resistance from the steepest rise. */
    static Series of(List<PressureSample> samples, RiseSetup setup, IceVaporPressure ice) {
      PressureSample.requireSeries(samples, LEAST_SAMPLES);
      double[] times = samples.stream().mapToDouble(PressureSample::time).toArray();
      double[] pressures = samples.stream().mapToDouble(PressureSample::pressure).toArray();
      double steepest = steepest(times, pressures);
      double last = Math.min(pressures[pressures.length - 1], Water.TRIPLE_POINT_PRESSURE);
      double drive = Math.max(last - setup.startPressure(), 0.01 * last);
      return new Series(
          times,
          pressures,
          steepest,
          ice.saturationTemperature(last),
          setup.risePerFlux() * drive / steepest);
    }

    /** Trial steps of the fit must stay where ice is described. */
    RiseState state(double warmer, double resistanceFactor, double leak) {
      double temperature =
          Math.max(COLDEST_FRONT, Math.min(Water.TRIPLE_POINT_TEMPERATURE, front + warmer));
      double factor = Math.max(LEAST_RESISTANCE_SHARE, resistanceFactor);
      return new RiseState(temperature, factor * resistance, leak);
    }

    private static double steepest(double[] times, double[] pressures) {
      double steepest = 0;
      for (int i = 1; i < times.length; i++) {
        double slope = (pressures[i] - pressures[i - 1]) / (times[i] - times[i - 1]);
        steepest = Math.max(steepest, slope);
      }
      if (steepest == 0) {
        throw new IllegalArgumentException("the pressure does not rise; this is no pressure rise");
      }
      return steepest;
    }
  }
}
