package org.firnline.numerics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
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

  private static final double TOLERANCE = 1e-15;
  private static final int MOST_EVALUATIONS = 2_000;

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
   * Fits {@code model} to {@code observations}.
   *
   * @param start first guess of the parameters
   * @param sizes typical size of each parameter; positive
   */
  public static Fit fit(Model model, double[] observations, double[] start, double[] sizes) {
    double[] scaledStart = new double[start.length];
    for (int i = 0; i < start.length; i++) {
      scaledStart[i] = start[i] / sizes[i];
    }
    Scaled scaled = new Scaled(model, sizes);
    LeastSquaresOptimizer.Optimum optimum =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(TOLERANCE)
            .withParameterRelativeTolerance(TOLERANCE)
            .withOrthoTolerance(TOLERANCE)
            .optimize(
                new LeastSquaresBuilder()
                    .start(scaledStart)
                    .target(observations)
                    .model(point -> scaled.valueAndSlopes(point.toArray()))
                    .maxEvaluations(MOST_EVALUATIONS)
                    .maxIterations(MOST_EVALUATIONS)
                    .build());
    return result(optimum, scaled, sizes);
  }

  private static Fit result(LeastSquaresOptimizer.Optimum optimum, Scaled scaled, double[] sizes) {
    double[] point = optimum.getPoint().toArray();
    int count = point.length;
    double sumOfSquares = optimum.getResiduals().dotProduct(optimum.getResiduals());
    int freedom = optimum.getResiduals().getDimension() - count;
    double variance = freedom > 0 ? sumOfSquares / freedom : 0;
    RealMatrix slopes = scaled.slopes(point);
    var singular = new SingularValueDecomposition(slopes.transposeMultiply(slopes));
    double[] values = singular.getSingularValues();
    boolean determined = values[count - 1] > DETERMINED * DETERMINED * values[0];
    DecompositionSolver solver = singular.getSolver();
    double[][] covariance = solver.getInverse().scalarMultiply(variance).getData();
    double[] parameters = new double[count];
    for (int i = 0; i < count; i++) {
      parameters[i] = point[i] * sizes[i];
      for (int j = 0; j < count; j++) {
        covariance[i][j] *= sizes[i] * sizes[j];
      }
    }
    return new Fit(parameters, covariance, sumOfSquares, determined, optimum.getEvaluations());
  }

  /** The model in scaled parameters. */
  private static final class Scaled {

    private final Model model;
    private final double[] sizes;

    Scaled(Model model, double[] sizes) {
      this.model = model;
      this.sizes = sizes.clone();
    }

    Pair<RealVector, RealMatrix> valueAndSlopes(double[] point) {
      return new Pair<>(new ArrayRealVector(at(point)), slopes(point));
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
