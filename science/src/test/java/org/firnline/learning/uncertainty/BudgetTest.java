package org.firnline.learning.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firnline.numerics.StudentT;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Worked examples of JCGM 100:2008, annex H (figures from memory). */
class BudgetTest {

  /** H.2: five simultaneous readings of voltage, current and phase; resistance and reactance. */
  @Nested
  class SimultaneousResistanceAndReactance {

    private final double[][] readings = {
      {5.007, 4.994, 5.005, 4.990, 4.999},
      {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3},
      {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
    };

    private Budget of(Budget.Formula formula) {
      List<MeasuredInput> inputs = List.of(input("V", 0), input("I", 1), input("phase", 2));
      double[][] correlation = new double[3][3];
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          correlation[i][j] = covariance(i, j) / Math.sqrt(covariance(i, i) * covariance(j, j));
        }
      }
      return Budget.of(formula, inputs, correlation);
    }

    private MeasuredInput input(String name, int row) {
      return new MeasuredInput(name, mean(row), Math.sqrt(covariance(row, row)), 4);
    }

    private double mean(int row) {
      return List.of(0, 1, 2, 3, 4).stream().mapToDouble(i -> readings[row][i]).sum() / 5;
    }

    private double covariance(int first, int second) {
      double sum = 0;
      for (int i = 0; i < 5; i++) {
        sum += (readings[first][i] - mean(first)) * (readings[second][i] - mean(second));
      }
      return sum / (5 * 4);
    }

    /** Printed: R = 127.732, u = 0.071 ohm. */
    @Test
    void givesTheResistance() {
      Budget resistance = of(in -> in[0] / in[1] * Math.cos(in[2]));
      assertThat(resistance.value()).isCloseTo(127.732, within(5e-4));
      assertThat(resistance.uncertainty()).isCloseTo(0.071, within(5e-4));
    }

    /** Printed: X = 219.847, u = 0.295 ohm. */
    @Test
    void givesTheReactance() {
      Budget reactance = of(in -> in[0] / in[1] * Math.sin(in[2]));
      assertThat(reactance.value()).isCloseTo(219.847, within(5e-4));
      assertThat(reactance.uncertainty()).isCloseTo(0.295, within(1e-3));
    }

    /** Printed: Z = 254.260, u = 0.236 ohm. */
    @Test
    void givesTheImpedance() {
      Budget impedance = of(in -> in[0] / in[1]);
      assertThat(impedance.value()).isCloseTo(254.260, within(5e-4));
      assertThat(impedance.uncertainty()).isCloseTo(0.236, within(5e-4));
    }
  }

  /**
   * H.1: an end gauge against a standard, in nm. Printed: u = 32 nm, 16 degrees of freedom, t₉₉ =
   * 2.92, U₉₉ = 93 nm.
   */
  @Nested
  class EndGauge {

    private final Budget budget =
        Budget.of(
            in -> in[0] + in[1] - 50e6 * (in[2] * -0.1 + 11.5e-6 * in[3]),
            List.of(
                new MeasuredInput("standard", 50_000_623, 25, 18),
                new MeasuredInput("difference", 215, 9.7, 25.6),
                new MeasuredInput("expansion", 0, 0.58e-6, 50),
                new MeasuredInput("temperature", 0, 0.029, 2)));

    @Test
    void givesTheLengthAndItsUncertainty() {
      assertThat(budget.value()).isCloseTo(50_000_838, within(0.5));
      assertThat(budget.uncertainty()).isCloseTo(32, within(0.5));
    }

    @Test
    void givesTheDegreesOfFreedomAndTheExpandedUncertainty() {
      assertThat(Math.floor(budget.freedom())).isEqualTo(16);
      assertThat(StudentT.coverageFactor(0.99, 16)).isCloseTo(2.92, within(5e-3));
      assertThat(budget.expanded(0.99)).isCloseTo(93, within(0.6));
    }

    @Test
    void saysWhatEachInputAdds() {
      assertThat(budget.parts().get(3).change()).isCloseTo(-16.6, within(0.1));
    }
  }

  /** Two-sided factors of a normal distribution and of few observations (JCGM 100:2008, G.2). */
  @Test
  void knowsCoverageFactors() {
    assertThat(StudentT.coverageFactor(0.95, Double.POSITIVE_INFINITY))
        .isCloseTo(1.960, within(5e-4));
    assertThat(StudentT.coverageFactor(0.95, 4)).isCloseTo(2.78, within(5e-3));
    assertThat(StudentT.coverageFactor(0.9545, 10)).isCloseTo(2.28, within(5e-3));
  }

  @Test
  void refusesNonsense() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MeasuredInput.known("loss", Double.NaN, 1))
        .withMessageContaining("loss");
    assertThatIllegalArgumentException().isThrownBy(() -> MeasuredInput.known("loss", 1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new MeasuredInput("loss", 1, 1, 0));
  }
}
