package org.firnline.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The optimizer on problems of the NIST Statistical Reference Datasets, non-linear regression:
 * certified parameters and residual sums of squares. Data and certified values are from memory; the
 * certified residual sum of squares, to many digits, would not be met by a wrong datum.
 */
class StatisticalReferenceTest {

  /**
   * One problem.
   *
   * @param name as in the collection, with its level of difficulty
   * @param starts both prescribed starting points
   * @param certified parameters
   * @param sumOfSquares certified residual sum of squares
   */
  record Problem(
      String name,
      Curve curve,
      double[] x,
      double[] y,
      double[][] starts,
      double[] certified,
      double sumOfSquares) {

    @Override
    public String toString() {
      return name;
    }
  }

  /** y for x and parameters. */
  @FunctionalInterface
  interface Curve {
    double at(double x, double[] b);
  }

  static Stream<Problem> problems() {
    return Stream.of(
        new Problem(
            "Rat42, higher",
            (x, b) -> b[0] / (1 + Math.exp(b[1] - b[2] * x)),
            new double[] {9, 14, 21, 28, 42, 57, 63, 70, 79},
            new double[] {8.930, 10.800, 18.590, 22.330, 39.350, 56.110, 61.730, 64.620, 67.080},
            new double[][] {{100, 1, 0.1}, {75, 2.5, 0.07}},
            new double[] {7.2462237576e1, 2.6180768402, 6.7359200066e-2},
            8.0565229338),
        new Problem(
            "Rat43, higher",
            (x, b) -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3]),
            new double[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15},
            new double[] {
              16.08, 33.83, 65.80, 97.20, 191.55, 326.20, 386.87, 520.53, 590.03, 651.92, 724.93,
              699.56, 689.96, 637.56, 717.41
            },
            new double[][] {{700, 5, 0.75, 1.3}},
            new double[] {6.9964151270e2, 5.2771253025, 7.5962938329e-1, 1.2792483859},
            8.7864049080e3),
        new Problem(
            "MGH09, higher",
            (x, b) -> b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]),
            new double[] {4.0, 2.0, 1.0, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625},
            new double[] {
              0.1957, 0.1947, 0.1735, 0.1600, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246
            },
            new double[][] {{0.25, 0.39, 0.415, 0.39}},
            new double[] {1.9280693458e-1, 1.9128232873e-1, 1.2305650693e-1, 1.3606233068e-1},
            3.0750560385e-4),
        new Problem(
            "BoxBOD, higher",
            (x, b) -> b[0] * (1 - Math.exp(-b[1] * x)),
            new double[] {1, 2, 3, 5, 7, 10},
            new double[] {109, 149, 149, 191, 213, 224},
            new double[][] {{100, 0.75}},
            new double[] {2.1380940889e2, 5.4723748542e-1},
            1.1680088766e3),
        new Problem(
            "MGH10, higher",
            (x, b) -> b[0] * Math.exp(b[1] / (x + b[2])),
            new double[] {50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 105, 110, 115, 120, 125},
            new double[] {
              34780, 28610, 23650, 19630, 16370, 13720, 11540, 9744, 8261, 7030, 6005, 5147, 4427,
              3820, 3307, 2872
            },
            new double[][] {{0.02, 4000, 250}},
            new double[] {5.6096364710e-3, 6.1813463463e3, 3.4522363462e2},
            8.7945855171e1),
        new Problem(
            "DanWood, lower",
            (x, b) -> b[0] * Math.pow(x, b[1]),
            new double[] {1.309, 1.471, 1.490, 1.565, 1.611, 1.680},
            new double[] {2.138, 3.421, 3.597, 4.340, 4.882, 5.660},
            new double[][] {{1, 5}, {0.7, 4}},
            new double[] {7.6886226176e-1, 3.8604055871},
            4.3173084083e-3));
  }

  /** Parameters to six, sums of squares to eight certified digits. */
  @ParameterizedTest
  @MethodSource("problems")
  void meetsCertifiedValues(Problem problem) {
    for (double[] start : problem.starts()) {
      double[] sizes = new double[start.length];
      for (int i = 0; i < start.length; i++) {
        sizes[i] = Math.abs(start[i]);
      }
      Fit fit =
          LeastSquares.fit(
              b -> {
                double[] predicted = new double[problem.x().length];
                for (int i = 0; i < predicted.length; i++) {
                  predicted[i] = problem.curve().at(problem.x()[i], b);
                }
                return predicted;
              },
              problem.y(),
              start,
              sizes);
      assertThat(fit.sumOfSquares())
          .isCloseTo(problem.sumOfSquares(), within(1e-8 * problem.sumOfSquares()));
      for (int i = 0; i < start.length; i++) {
        double certified = problem.certified()[i];
        assertThat(fit.value(i)).isCloseTo(certified, within(1e-6 * Math.abs(certified)));
      }
    }
  }
}
