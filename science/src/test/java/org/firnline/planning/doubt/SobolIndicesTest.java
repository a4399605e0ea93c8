package org.firnline.planning.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SobolIndicesTest {

  /** Error of 4096 Sobol points on functions of order one, a few parts in a thousand. */
  private static final double EVEN_POINTS = 0.01;

  /**
   * sin x₁ + a sin² x₂ + b x₃⁴ sin x₁ on (−π, π)³ with a = 7, b = 0.1. Source: Ishigami &amp;
   * Homma, Proc. ISUMA '90, 398 (1990); its variances in closed form are the usual textbook ones
   * (from memory): V₁ = (1 + bπ⁴/5)²/2, V₂ = a²/8, V₁₃ = 8b²π⁸/225.
   */
  @Nested
  class TheFunctionOfIshigamiAndHomma {

    private static final double A = 7;
    private static final double B = 0.1;

    private final double fourth = Math.pow(Math.PI, 4);
    private final double alone1 = Math.pow(1 + B * fourth / 5, 2) / 2;
    private final double alone2 = A * A / 8;
    private final double both13 = 8 * B * B * fourth * fourth / 225;
    private final double variance = alone1 + alone2 + both13;
    private final SobolIndices found =
        SobolIndices.of(TheFunctionOfIshigamiAndHomma::value, 3, 4096, 1);

    private static double value(double[] point) {
      double x1 = Math.PI * (2 * point[0] - 1);
      double x2 = Math.PI * (2 * point[1] - 1);
      double x3 = Math.PI * (2 * point[2] - 1);
      return Math.sin(x1) + A * Math.sin(x2) * Math.sin(x2) + B * Math.pow(x3, 4) * Math.sin(x1);
    }

    @Test
    void its_printed_shares_are_0_3139_and_0_4424_and_0() {
      assertThat(alone1 / variance).isCloseTo(0.3139, within(5e-5));
      assertThat(alone2 / variance).isCloseTo(0.4424, within(5e-5));
      assertThat(both13 / variance).isCloseTo(0.2437, within(5e-5));
    }

    @Test
    void first_order_shares_are_found() {
      assertThat(found.first().get(0)).isCloseTo(alone1 / variance, within(EVEN_POINTS));
      assertThat(found.first().get(1)).isCloseTo(alone2 / variance, within(EVEN_POINTS));
      assertThat(found.first().get(2)).isCloseTo(0, within(EVEN_POINTS));
    }

    @Test
    void total_shares_are_found() {
      assertThat(found.total().get(0)).isCloseTo((alone1 + both13) / variance, within(EVEN_POINTS));
      assertThat(found.total().get(1)).isCloseTo(alone2 / variance, within(EVEN_POINTS));
      assertThat(found.total().get(2)).isCloseTo(both13 / variance, within(EVEN_POINTS));
    }
  }

  /** Variances of a sum add: 4 : 1 for twice and once a uniform number. */
  @Test
  void a_sum_has_no_interactions() {
    SobolIndices sum = SobolIndices.of(x -> 2 * x[0] + x[1], 2, 1024, 7);
    assertThat(sum.first().get(0)).isCloseTo(0.8, within(EVEN_POINTS));
    assertThat(sum.total().get(1)).isCloseTo(0.2, within(EVEN_POINTS));
  }

  @Test
  void a_constant_has_no_shares() {
    assertThat(SobolIndices.of(x -> 3, 2, 16, 7).total()).containsExactly(0.0, 0.0);
  }
}
