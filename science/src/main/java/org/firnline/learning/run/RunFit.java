package org.firnline.learning.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.firnline.numerics.Fit;
import org.firnline.numerics.LeastSquares;

/**
 * Learns K_v, R_0, A_1 and A_2 from a thermometer in a vessel and the end of its ice: least squares
 * on the transient model of drying, with lognormal priors and the thermometer's offset as a
 * nuisance.
 *
 * <p>The noise of the readings is not assumed: a first fit finds it as the root mean square of its
 * residuals, enlarged where these hang together (lag-one correlation ρ: variance times (1 + ρ)/(1 −
 * ρ)), and a second fit weighs with it. Intervals of 90 % are profiles: a parameter is moved, the
 * others are fitted anew, until the sum of squares has grown by 1.645².
 *
 * <p>Assumes one vessel drying as {@code drying.recipe} has it: shelf below, no wall beside, no
 * mouth resistance. What a wall adds goes into K_v.
 *
 * <p>Valid: readings over ice only. A vessel with a thermometer nucleates warmer and dries faster
 * than its neighbors; what is learned is of probed vessels.
 *
 * <p>Source: maximum a posteriori estimate and profile likelihood, textbook statistics; enlarged
 * variance for first-order autoregressive residuals likewise.
 */
public final class RunFit {

  /** 90 % two-sided of a standard normal variable. */
  private static final double DEVIATIONS = 1.6449;

  private static final double FIRST_NOISE_K = 0.3;
  private static final double LEAST_NOISE_K = 0.005;
  private static final double TOLERANCE = 1e-7;
  private static final double PROFILE_TOLERANCE = 1e-5;
  private static final double NO_END_S = 1e9;
  private static final int PROFILE_STEPS = 3;
  private static final double OFFSET_SIZE_K = 0.3;
  private static final double LOGARITHM_SIZE = 0.2;

  private final ProbedVessel vessel;
  private final RunPriors priors;
  private final TransientPrediction prediction;
  private final List<Parameter> free;

  private RunFit(ProbedVessel vessel, RunPriors priors) {
    this.vessel = vessel;
    this.priors = priors;
    this.prediction = new TransientPrediction(vessel, priors);
    this.free =
        Arrays.stream(Parameter.values())
            .filter(parameter -> !priors.of(parameter).isHeld())
            .toList();
  }

  /** What {@code vessel} tells, given {@code priors}. */
  public static RunLesson learn(ProbedVessel vessel, RunPriors priors) {
    return new RunFit(vessel, priors).lesson();
  }

  private RunLesson lesson() {
    double[] start = free.stream().mapToDouble(one -> inner(one, priors.of(one).best())).toArray();
    Fit first = fit(start, FIRST_NOISE_K, free, TOLERANCE);
    double noise = noise(point(first), first.size());
    Fit second = fit(point(first), noise, free, TOLERANCE);
    double again = noise(point(second), second.size());
    Fit last = fit(point(second), again, free, TOLERANCE);
    double[] best = point(last);
    double[] predicted = prediction.of(values(best, free));
    List<RunLesson.Residual> residuals = residuals(predicted);
    return new RunLesson(
        vessel,
        learned(last, best, again),
        correlations(last),
        residuals,
        vessel.end().map(end -> predicted[residuals.size()] - end.time()).orElse(Double.NaN),
        again,
        together(residuals),
        last.determined());
  }

  private Fit fit(double[] start, double noise, List<Parameter> fitted, double tolerance) {
    double[] sizes = fitted.stream().mapToDouble(RunFit::size).toArray();
    return LeastSquares.fit(
            point -> whitened(point, noise, fitted),
            new double[vessel.readings().size() + 1 + fitted.size()],
            start.clone(),
            sizes,
            tolerance)
        .withKnownDeviations();
  }

  /** Residuals in their standard deviations: readings, end of ice, priors of what is fitted. */
  private double[] whitened(double[] point, double noise, List<Parameter> fitted) {
    return whitened(prediction.of(values(point, fitted)), point, noise, fitted);
  }

  private double[] whitened(
      double[] predicted, double[] point, double noise, List<Parameter> fitted) {
    int readings = vessel.readings().size();
    double[] whitened = new double[readings + 1 + fitted.size()];
    for (int i = 0; i < readings; i++) {
      whitened[i] = (predicted[i] - vessel.readings().get(i).temperature()) / noise;
    }
    double end = Math.min(predicted[readings], NO_END_S);
    whitened[readings] =
        vessel.end().map(known -> (end - known.time()) / known.doubt()).orElse(0.0);
    for (int i = 0; i < fitted.size(); i++) {
      Prior prior = priors.of(fitted.get(i));
      whitened[readings + 1 + i] = (point[i] - inner(fitted.get(i), prior.best())) / prior.spread();
    }
    return whitened;
  }

  private double noise(double[] point, int parameters) {
    List<RunLesson.Residual> residuals = residuals(prediction.of(values(point, free)));
    double sum = 0;
    for (RunLesson.Residual residual : residuals) {
      sum += residual.difference() * residual.difference();
    }
    double freedom = Math.max(1, residuals.size() - parameters);
    double hang = Math.max(0, Math.min(0.9, together(residuals)));
    return Math.max(LEAST_NOISE_K, Math.sqrt(sum / freedom * (1 + hang) / (1 - hang)));
  }

  private static double together(List<RunLesson.Residual> residuals) {
    double same = 0;
    double next = 0;
    for (int i = 0; i < residuals.size(); i++) {
      double now = residuals.get(i).difference();
      same += now * now;
      next += i > 0 ? now * residuals.get(i - 1).difference() : 0;
    }
    return same == 0 ? 0 : next / same;
  }

  private List<RunLesson.Residual> residuals(double[] predicted) {
    List<RunLesson.Residual> residuals = new ArrayList<>();
    for (int i = 0; i < vessel.readings().size(); i++) {
      ProbedVessel.TemperatureReading reading = vessel.readings().get(i);
      residuals.add(new RunLesson.Residual(reading.time(), reading.temperature(), predicted[i]));
    }
    return residuals;
  }

  private List<Learned> learned(Fit fit, double[] best, double noise) {
    double scale = priors.transfer().at(vessel.meanPressure());
    List<Learned> learned = new ArrayList<>();
    for (Parameter parameter : Parameter.values()) {
      Prior prior = priors.of(parameter);
      double factor = parameter == Parameter.HEAT_TRANSFER ? scale : 1;
      Prior shown = new Prior(prior.best() * factor, prior.spread());
      int index = free.indexOf(parameter);
      if (index < 0) {
        double held = shown.best();
        learned.add(new Learned(parameter, shown, held, 0, held, held));
        continue;
      }
      double deviation = Math.sqrt(fit.covariance(index, index));
      double low = profile(fit, best, noise, index, -1);
      double high = profile(fit, best, noise, index, 1);
      learned.add(
          new Learned(
              parameter,
              shown,
              factor * outer(parameter, best[index]),
              deviation,
              factor * outer(parameter, low),
              factor * outer(parameter, high)));
    }
    return learned;
  }

  /** Where the profile of one parameter has grown by 1.645², on one side. */
  private double profile(Fit fit, double[] best, double noise, int index, int side) {
    double least = fit.sumOfSquares();
    double deviation = Math.sqrt(fit.covariance(index, index));
    double reach = DEVIATIONS * deviation;
    List<Parameter> others = new ArrayList<>(free);
    others.remove(index);
    for (int step = 0; step < PROFILE_STEPS; step++) {
      double[] moved = new double[others.size()];
      int other = 0;
      for (int i = 0; i < best.length; i++) {
        if (i != index) {
          double along = fit.covariance(i, index) / fit.covariance(index, index);
          moved[other++] = best[i] + along * side * reach;
        }
      }
      double grown = leastOfOthers(moved, best[index] + side * reach, index, others, noise) - least;
      double seen = Math.sqrt(Math.max(1e-6, grown));
      double next = reach * Math.max(0.5, Math.min(2, DEVIATIONS / seen));
      boolean near = Math.abs(next - reach) < 0.02 * reach;
      reach = next;
      if (near) {
        break;
      }
    }
    return best[index] + side * reach;
  }

  private double leastOfOthers(
      double[] start, double fixed, int index, List<Parameter> others, double noise) {
    Parameter moved = free.get(index);
    Prior prior = priors.of(moved);
    double own = (fixed - inner(moved, prior.best())) / prior.spread();
    if (others.isEmpty()) {
      double[] alone = whitened(new double[] {fixed}, noise, free);
      return Arrays.stream(alone).map(value -> value * value).sum();
    }
    double[] sizes = others.stream().mapToDouble(RunFit::size).toArray();
    Fit fit =
        LeastSquares.fit(
            point -> {
              double[] all = new double[free.size()];
              for (int i = 0, other = 0; i < all.length; i++) {
                all[i] = i == index ? fixed : point[other++];
              }
              return whitened(prediction.of(values(all, free)), point, noise, others);
            },
            new double[vessel.readings().size() + 1 + others.size()],
            start,
            sizes,
            PROFILE_TOLERANCE);
    return fit.sumOfSquares() + own * own;
  }

  private List<List<Double>> correlations(Fit fit) {
    List<List<Double>> rows = new ArrayList<>();
    for (Parameter first : Parameter.values()) {
      List<Double> row = new ArrayList<>();
      for (Parameter second : Parameter.values()) {
        int i = free.indexOf(first);
        int j = free.indexOf(second);
        row.add(i < 0 || j < 0 ? 0.0 : fit.correlation(i, j));
      }
      rows.add(row);
    }
    return rows;
  }

  /** All parameters as the model takes them. */
  private double[] values(double[] point, List<Parameter> fitted) {
    double[] values = new double[Parameter.values().length];
    int at = 0;
    for (Parameter parameter : Parameter.values()) {
      int index = fitted.indexOf(parameter);
      values[at++] = index < 0 ? priors.of(parameter).best() : outer(parameter, point[index]);
    }
    return values;
  }

  private static double[] point(Fit fit) {
    double[] point = new double[fit.size()];
    for (int i = 0; i < point.length; i++) {
      point[i] = fit.value(i);
    }
    return point;
  }

  private static double size(Parameter parameter) {
    return parameter.isLogarithmic() ? LOGARITHM_SIZE : OFFSET_SIZE_K;
  }

  /** Logarithms reach further than any cake; the bounds keep trial steps finite. */
  private static double outer(Parameter parameter, double inner) {
    return parameter.isLogarithmic() ? Math.exp(Math.max(-30, Math.min(40, inner))) : inner;
  }

  private static double inner(Parameter parameter, double outer) {
    return parameter.isLogarithmic() ? Math.log(outer) : outer;
  }
}
