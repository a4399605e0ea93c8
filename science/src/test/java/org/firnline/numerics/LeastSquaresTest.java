package org.firnline.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeastSquaresTest {

  /**
   * NIST Statistical Reference Datasets, Misra1a: 14 observations of y = b₁(1 − exp(−b₂ x)), with
   * certified parameters, standard deviations and residual sum of squares (as quoted in public test
   * suites).
   */
  private static final double[] X = {
    77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0
  };

  private static final double[] Y = {
    10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78
  };

  private static final double SLOPES_BY_DIFFERENCES = 1e-10;

  private static double[] misra(double[] b) {
    double[] predicted = new double[X.length];
    for (int i = 0; i < X.length; i++) {
      predicted[i] = b[0] * (1 - Math.exp(-b[1] * X[i]));
    }
    return predicted;
  }

  /** Both starting points that the reference prescribes; agreement to eight certified digits. */
  @ParameterizedTest
  @CsvSource({"500, 0.0001", "250, 0.0005"})
  void meetsCertifiedValues(double first, double second) {
    Fit fit =
        LeastSquares.fit(
            LeastSquaresTest::misra, Y, new double[] {first, second}, new double[] {100, 1e-3});
    assertThat(fit.value(0)).isCloseTo(2.3894212918e2, within(1e-8 * 2.3894212918e2));
    assertThat(fit.value(1)).isCloseTo(5.5015643181e-4, within(1e-8 * 5.5015643181e-4));
    assertThat(fit.standardError(0)).isCloseTo(2.7070075241, within(1e-6 * 2.7070075241));
    assertThat(fit.standardError(1)).isCloseTo(7.2668688436e-6, within(1e-6 * 7.2668688436e-6));
    assertThat(fit.sumOfSquares()).isCloseTo(1.2455138894e-1, within(1e-10));
    assertThat(fit.determined()).isTrue();
    assertThat(fit.evaluations()).isBetween(2, 200);
  }

  /** Straight line through (0,1), (1,3), (2,4), (3,4): slope 1, intercept 1.5, s² = 0.5. */
  @Test
  void meetsTheClosedFormOfALine() {
    Fit fit =
        LeastSquares.fit(
            line ->
                new double[] {
                  line[0], line[0] + line[1], line[0] + 2 * line[1], line[0] + 3 * line[1]
                },
            new double[] {1, 3, 4, 4},
            new double[] {0, 0},
            new double[] {1, 1});
    assertThat(fit.value(0)).isCloseTo(1.5, within(SLOPES_BY_DIFFERENCES));
    assertThat(fit.value(1)).isCloseTo(1, within(SLOPES_BY_DIFFERENCES));
    assertThat(fit.sumOfSquares()).isCloseTo(1, within(1e-12));
    assertThat(fit.standardError(1)).isCloseTo(Math.sqrt(0.5 / 5), within(1e-9));
    assertThat(fit.standardError(0)).isCloseTo(Math.sqrt(0.5 * 14 / 20), within(1e-9));
    assertThat(fit.correlation(0, 1)).isCloseTo(-6 / Math.sqrt(4.0 * 14), within(1e-9));
  }

  /** Only the sum of two parameters shows in the data. */
  @Test
  void saysWhenDataCannotTellParametersApart() {
    Fit fit =
        LeastSquares.fit(
            both ->
                new double[] {both[0] + both[1], 2 * (both[0] + both[1]), 3 * (both[0] + both[1])},
            new double[] {1, 2.1, 2.9},
            new double[] {0.3, 0.3},
            new double[] {1, 1});
    assertThat(fit.determined()).isFalse();
    assertThat(fit.standardError(0)).isInfinite();
    assertThat(fit.value(0) + fit.value(1)).isCloseTo(1, within(0.02));
  }
}
