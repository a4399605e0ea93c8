package org.firnline.numerics;

import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Non-linear least squares: the parameters with which a model comes closest to observations, their
 * covariance, and whether the observations determine them at all.
 *
 * <p>Parameters are scaled by given sizes, slopes are central differences. The covariance is the
 * linearized one, s² (JᵀJ)⁻¹ with s² the residual variance.
 *
 * <p>Source: Levenberg (1944), Marquardt (1963) in the form of Moré (1978), by the mathematics
 * library.
 */
public final class LeastSquares {

  /** Step of central differences, relative to the size of a parameter; error of order 1e-10. */
  private static final double STEP = 1e-5;

  /** First steps stay as long as the first guess, in units of the sizes. */
  private static final double FIRST_STEP = 1;

  private static final double TOLERANCE = 1e-14;
  private static final int MOST_EVALUATIONS = 500;

  /**
   * Singular values below this share of the greatest say that data cannot tell parameters apart.
   */
  private static final double DETERMINED = 1e-8;

  private LeastSquares() {}

  /** Predictions of a model, one for each observation. */
  @FunctionalInterface
  public interface Model {

    /** The predictions for {@code parameters}, which are not to be changed. */
    double[] predict(double[] parameters);
  }

  /**
   * Fits {@code model} to {@code observations}. A search that does not come to an end gives its
   * best point and says that it is not determined.
   *
   * @param start first guess of the parameters
   * @param sizes typical size of each parameter; positive
   */
  public static Fit fit(Model model, double[] observations, double[] start, double[] sizes) {
    double[] scaledStart = new double[start.length];
    for (int i = 0; i < start.length; i++) {
      scaledStart[i] = start[i] / sizes[i];
    }
    Scaled scaled = new Scaled(model, observations, sizes);
    boolean converged = true;
    try {
      optimize(scaled, observations, scaledStart);
    } catch (MathIllegalStateException unfinished) {
      converged = false;
    }
    return result(scaled, converged, sizes);
  }

  private static void optimize(Scaled scaled, double[] observations, double[] start) {
    new LevenbergMarquardtOptimizer()
        .withInitialStepBoundFactor(FIRST_STEP)
        .withCostRelativeTolerance(TOLERANCE)
        .withParameterRelativeTolerance(TOLERANCE)
        .withOrthoTolerance(TOLERANCE)
        .optimize(
            new LeastSquaresBuilder()
                .start(start)
                .target(observations)
                .model(point -> scaled.valueAndSlopes(point.toArray()))
                .maxEvaluations(MOST_EVALUATIONS)
                .maxIterations(MOST_EVALUATIONS)
                .build());
  }

  /**
   * Slopes are brought to length 1 before they are compared, so that the verdict on what the data
   * determine does not depend on units.
   */
  private static Fit result(Scaled scaled, boolean converged, double[] sizes) {
    double[] point = scaled.best;
    int count = point.length;
    RealMatrix slopes = scaled.slopes(point);
    double[] lengths = new double[count];
    for (int i = 0; i < count; i++) {
      lengths[i] = slopes.getColumnVector(i).getNorm();
      double length = lengths[i] > 0 ? lengths[i] : 1;
      slopes.setColumnVector(i, slopes.getColumnVector(i).mapDivide(length));
    }
    var singular = new SingularValueDecomposition(slopes);
    double[] values = singular.getSingularValues();
    boolean determined = converged && values[count - 1] > DETERMINED * values[0];
    int freedom = slopes.getRowDimension() - count;
    double variance = freedom > 0 ? scaled.least / freedom : 0;
    double[][] covariance = singular.getCovariance(0).getData();
    double[] parameters = new double[count];
    for (int i = 0; i < count; i++) {
      parameters[i] = point[i] * sizes[i];
      for (int j = 0; j < count; j++) {
        covariance[i][j] *= sizes[i] * sizes[j] / (lengths[i] * lengths[j]);
      }
    }
    return new Fit(parameters, covariance, variance, scaled.least, determined, scaled.evaluations);
  }

  /** The model in scaled parameters; remembers the best point it was asked for. */
  private static final class Scaled {

    private final Model model;
    private final double[] observations;
    private final double[] sizes;
    private double[] best = {};
    private double least = Double.POSITIVE_INFINITY;
    private int evaluations;

    Scaled(Model model, double[] observations, double[] sizes) {
      this.model = model;
      this.observations = observations.clone();
      this.sizes = sizes.clone();
    }

    Pair<RealVector, RealMatrix> valueAndSlopes(double[] point) {
      double[] predicted = at(point);
      evaluations++;
      double sum = 0;
      for (int i = 0; i < predicted.length; i++) {
        double residual = predicted[i] - observations[i];
        sum += residual * residual;
      }
      if (sum < least || best.length == 0) {
        least = sum;
        best = point.clone();
      }
      return new Pair<>(new ArrayRealVector(predicted), slopes(point));
    }

    RealMatrix slopes(double[] point) {
      double[][] columns = new double[point.length][];
      for (int i = 0; i < point.length; i++) {
        double step = STEP * Math.max(1, Math.abs(point[i]));
        double[] up = at(moved(point, i, step));
        double[] down = at(moved(point, i, -step));
        columns[i] = new double[up.length];
        for (int row = 0; row < up.length; row++) {
          columns[i][row] = (up[row] - down[row]) / (2 * step);
        }
      }
      return new Array2DRowRealMatrix(columns).transpose();
    }

    private double[] at(double[] point) {
      double[] parameters = point.clone();
      for (int i = 0; i < parameters.length; i++) {
        parameters[i] *= sizes[i];
      }
      return model.predict(parameters);
    }

    private static double[] moved(double[] point, int index, double step) {
      double[] moved = point.clone();
      moved[index] += step;
      return moved;
    }
  }
}
