package org.firnline.drying.primary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KronrodRuleTest {

  /** Sums of fifteen doubles of order one. */
  private static final double ROUNDING = 1e-14;

  /** A 15-point Kronrod rule integrates polynomials up to degree 3·7 + 1 exactly. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2, 4, 10, 16, 22})
  void theFineRuleIntegratesEvenPowers(int power) {
    assertThat(integral(power, KronrodRule::weight)).isCloseTo(2.0 / (power + 1), within(ROUNDING));
  }

  /** The 7-point Gauss rule inside it does so up to degree 13. */
  @ParameterizedTest
  @ValueSource(ints = {0, 2, 4, 8, 12})
  void theCoarseRuleIntegratesEvenPowers(int power) {
    assertThat(integral(power, KronrodRule::coarseWeight))
        .isCloseTo(2.0 / (power + 1), within(ROUNDING));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 3, 21})
  void oddPowersCancel(int power) {
    assertThat(integral(power, KronrodRule::weight)).isCloseTo(0, within(ROUNDING));
  }

  private static double integral(int power, IntToDoubleFunction weight) {
    double sum = 0;
    for (int point = 0; point < KronrodRule.POINTS; point++) {
      sum += weight.applyAsDouble(point) * Math.pow(KronrodRule.abscissa(point), power);
    }
    return sum;
  }
}
