package org.firnline.numerics;

import java.util.Arrays;

/**
 * Explicit steps of order five with an error estimate of order four, for small smooth systems that
 * are asked for many times.
 *
 * <p>Accepts a step when the estimated error of every component stays below its absolute tolerance
 * plus the relative one; rejected steps shrink, at most to a hundred-millionth of the way, where
 * the step is taken as it is: a jump in the slopes costs accuracy of that order and no more.
 *
 * <p>Source: Dormand &amp; Prince, J. Comput. Appl. Math. 6, 19 (1980); step control as in Hairer,
 * Nørsett &amp; Wanner, Solving Ordinary Differential Equations I (1993), II.4.
 */
public final class DormandPrince5 {

  /** Right-hand sides of a system of first order. */
  @FunctionalInterface
  public interface Equations {

    /**
     * Writes the slopes.
     *
     * @param at independent variable
     * @param state dependent variables; not to be changed
     * @param slopes to be filled, one for each dependent variable
     */
    void slopes(double at, double[] state, double[] slopes);
  }

  private static final double[] NODES = {0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1};

  private static final double[][] WEIGHTS = {
    {},
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
  };

  private static final double[] ERROR = {
    71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
  };

  private static final int STAGES = 7;
  private static final double SAFETY = 0.9;
  private static final double LEAST_FACTOR = 0.2;
  private static final double GREATEST_FACTOR = 5;
  private static final double SMALLEST_SHARE = 1e-8;

  private final Equations equations;
  private final double relative;
  private final double[] absolute;
  private final double[][] slopes;
  private final double[] trial;
  private double suggested = Double.NaN;

  /**
   * @param relative tolerance relative to each component; positive
   * @param absolute tolerance for each component, in its unit; one for each, positive
   */
  public DormandPrince5(Equations equations, double relative, double... absolute) {
    this.equations = equations;
    this.relative = relative;
    this.absolute = Arrays.copyOf(absolute, absolute.length);
    this.slopes = new double[STAGES][absolute.length];
    this.trial = new double[absolute.length];
  }

  /**
   * One accepted step.
   *
   * @param from where the state stands
   * @param limit not to be passed; beyond {@code from}
   * @param state replaced by the state at the point returned
   * @return the point reached, at most {@code limit}
   */
  public double step(double from, double limit, double[] state) {
    double way = limit - from;
    double step = suggested > 0 ? Math.min(suggested, way) : 1e-3 * way;
    equations.slopes(from, state, slopes[0]);
    while (true) {
      double error = attempt(from, step, state);
      double factor = error == 0 ? GREATEST_FACTOR : SAFETY * Math.pow(error, -0.2);
      double bounded = Math.min(GREATEST_FACTOR, Math.max(LEAST_FACTOR, factor));
      boolean smallest = step <= SMALLEST_SHARE * way || from + step == from;
      if (error <= 1 || smallest) {
        System.arraycopy(trial, 0, state, 0, state.length);
        boolean cutByLimit = step == way && suggested > step;
        suggested = cutByLimit ? suggested : step * bounded;
        return step == way ? limit : from + step;
      }
      step *= Double.isNaN(error) ? LEAST_FACTOR : Math.min(1, bounded);
    }
  }

  /**
   * Steps from {@code from} to exactly {@code to}; {@code state} is replaced by the state there.
   */
  public void march(double from, double to, double[] state) {
    double at = from;
    while (at < to) {
      at = step(at, to, state);
    }
  }

  /** The next step will be at most {@code step}; for callers who know that something happens. */
  public void suggestAtMost(double step) {
    suggested = suggested > 0 ? Math.min(suggested, step) : step;
  }

  /** Fills {@link #trial} and returns the greatest error as a share of what is allowed. */
  private double attempt(double from, double step, double[] state) {
    for (int stage = 1; stage < STAGES; stage++) {
      for (int i = 0; i < state.length; i++) {
        trial[i] = state[i] + step * weighted(WEIGHTS[stage], i);
      }
      equations.slopes(from + NODES[stage] * step, trial, slopes[stage]);
    }
    double worst = 0;
    for (int i = 0; i < state.length; i++) {
      double allowed = absolute[i] + relative * Math.max(Math.abs(state[i]), Math.abs(trial[i]));
      double error = Math.abs(step * weighted(ERROR, i)) / allowed;
      worst = error > worst || Double.isNaN(error) ? error : worst;
    }
    return worst;
  }

  private double weighted(double[] weights, int component) {
    double sum = 0;
    for (int stage = 0; stage < weights.length; stage++) {
      sum += weights[stage] * slopes[stage][component];
    }
    return sum;
  }
}
