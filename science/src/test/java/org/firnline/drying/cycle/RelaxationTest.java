package org.firnline.drying.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RelaxationTest {

  private static final double PROMISED = 1e-13;

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 1e-4, 0.0199, 0.0201, 0.5, 3, 40})
  void isTheMeanOfTheExponential(double x) {
    double mean = -Math.expm1(-x) / x;
    assertThat(Relaxation.mean(x)).isCloseTo(mean, within(PROMISED * mean));
  }

  /** (x − 1 + e^−x)/x², by its series where that loses digits. */
  @ParameterizedTest
  @ValueSource(doubles = {0.0199, 0.0201, 0.5, 3, 40})
  void andTheMeanOfThatMean(double x) {
    double expected = (1 - -Math.expm1(-x) / x) / x;
    assertThat(Relaxation.meanOfMean(x)).isCloseTo(expected, within(1e-13 / x));
  }

  @Test
  void bothStartAtTheirLimits() {
    assertThat(Relaxation.mean(0)).isEqualTo(1);
    assertThat(Relaxation.meanOfMean(0)).isEqualTo(0.5);
  }
}
