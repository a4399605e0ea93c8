package org.firnline.numerics;

/** Parameters fitted to observations, with their doubt. */
public final class Fit {

  private final double[] parameters;
  private final double[][] perVariance;
  private final double variance;
  private final double sumOfSquares;
  private final boolean determined;
  private final int evaluations;

  Fit(
      double[] parameters,
      double[][] perVariance,
      double variance,
      double sumOfSquares,
      boolean determined,
      int evaluations) {
    this.parameters = parameters;
    this.perVariance = perVariance;
    this.variance = variance;
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
    return determined ? Math.sqrt(variance * perVariance[index][index]) : Double.POSITIVE_INFINITY;
  }

  /** Correlation of two parameters, −1 to 1. */
  public double correlation(int first, int second) {
    return perVariance[first][second]
        / Math.sqrt(perVariance[first][first] * perVariance[second][second]);
  }

  /**
   * The same fit where every residual was counted in standard deviations that are known: the
   * covariance is then (JᵀJ)⁻¹ and does not depend on how well the model happens to fit.
   */
  public Fit withKnownDeviations() {
    return new Fit(parameters, perVariance, 1, sumOfSquares, determined, evaluations);
  }

  /** Covariance of two parameters. */
  public double covariance(int first, int second) {
    return variance * perVariance[first][second];
  }

  /** How many parameters were fitted. */
  public int size() {
    return parameters.length;
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
