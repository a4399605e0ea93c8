package org.firnline.numerics;

/** Parameters fitted to observations, with their doubt. */
public final class Fit {

  private final double[] parameters;
  private final double[][] covariance;
  private final double sumOfSquares;
  private final boolean determined;
  private final int evaluations;

  Fit(
      double[] parameters,
      double[][] covariance,
      double sumOfSquares,
      boolean determined,
      int evaluations) {
    this.parameters = parameters;
    this.covariance = covariance;
    this.sumOfSquares = sumOfSquares;
    this.determined = determined;
    this.evaluations = evaluations;
  }

  /** The {@code index}-th parameter. */
  public double value(int index) {
    return parameters[index];
  }

  /** One standard deviation of the {@code index}-th parameter; infinite if undetermined. */
  public double standardError(int index) {
    return determined ? Math.sqrt(covariance[index][index]) : Double.POSITIVE_INFINITY;
  }

  /** Correlation of two parameters, −1 to 1; NaN for a perfect fit. */
  public double correlation(int first, int second) {
    return covariance[first][second]
        / Math.sqrt(covariance[first][first] * covariance[second][second]);
  }

  /** Sum of squared residuals. */
  public double sumOfSquares() {
    return sumOfSquares;
  }

  /** Whether the observations determine every parameter; if not, several fit equally well. */
  public boolean determined() {
    return determined;
  }

  /** How often the model was evaluated. */
  public int evaluations() {
    return evaluations;
  }
}
