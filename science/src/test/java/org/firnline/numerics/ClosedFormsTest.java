package org.firnline.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ClosedFormsTest {

  @Nested
  class Quadrature {

    @Property
    void isExactForPowers(
        @ForAll @IntRange(min = 0, max = 19) int power,
        @ForAll @DoubleRange(min = 0.1, max = 3) double to) {
      double expected = Math.pow(to, power + 1) / (power + 1);
      assertThat(GaussLegendre.integrate(x -> Math.pow(x, power), 0, to, 1e-12))
          .isCloseTo(expected, within(1e-13 * expected));
    }

    @Test
    void meetsKnownIntegrals() {
      assertThat(GaussLegendre.integrate(x -> 1 / (1 + x * x), 0, 1, 1e-14))
          .isCloseTo(Math.PI / 4, within(1e-15));
      assertThat(GaussLegendre.integrate(Math::exp, 0, 1, 1e-14))
          .isCloseTo(Math.E - 1, within(1e-15));
      assertThat(GaussLegendre.integrate(x -> 1 / (1 + 1e4 * x * x), -1, 1, 1e-12))
          .isCloseTo(2 * Math.atan(100) / 100, within(1e-13));
    }

    @Test
    void turnsAroundWithItsLimits() {
      assertThat(GaussLegendre.integrate(Math::exp, 1, 0, 1e-14))
          .isCloseTo(1 - Math.E, within(1e-15));
      assertThat(GaussLegendre.integrate(Math::exp, 1, 1, 1e-14)).isZero();
    }
  }

  @Nested
  class Roots {

    /** The fixed point of the cosine. */
    @Test
    void meetKnownNumbers() {
      assertThat(Root.find(x -> Math.cos(x) - x, 0, 1))
          .isCloseTo(0.7390851332151607, within(1e-15));
      assertThat(Root.find(x -> x * x - 2, 0, 2)).isCloseTo(Math.sqrt(2), within(1e-15));
    }

    @Test
    void mayLieAtAnEnd() {
      assertThat(Root.find(x -> x, 0, 1)).isZero();
      assertThat(Root.find(x -> x - 1, 0, 1)).isEqualTo(1);
    }

    @Test
    void areRefusedWithoutASignChange() {
      assertThatIllegalArgumentException().isThrownBy(() -> Root.find(x -> x * x + 1, -1, 1));
      assertThatIllegalArgumentException().isThrownBy(() -> Root.find(x -> Double.NaN, -1, 1));
    }
  }

  @Nested
  class Thresholds {

    @Property
    void areFoundToTheResolutionOfADouble(
        @ForAll @DoubleRange(min = 0.001, max = 0.999) double limit) {
      assertThat(Threshold.of(x -> x >= limit, 0, 1)).isCloseTo(limit, within(1e-15));
    }

    @Test
    void meetTheRootOfTwo() {
      assertThat(Threshold.of(x -> x * x > 2, 0, 2)).isCloseTo(Math.sqrt(2), within(1e-15));
    }
  }

  @Nested
  class Peaks {

    @Test
    void meetKnownGreatestValues() {
      assertThat(Peak.of(Math::sin, 0, Math.PI)).isCloseTo(1, within(1e-15));
      assertThat(Peak.of(x -> x * Math.exp(-x), 0, 10)).isCloseTo(1 / Math.E, within(1e-14));
    }

    @Test
    void mayLieAtAnEnd() {
      assertThat(Peak.of(Math::exp, 0, 1)).isEqualTo(Math.E);
      assertThat(Peak.of(x -> -x, 0, 1)).isZero();
      assertThat(Peak.of(x -> 7, 0, 1)).isEqualTo(7);
    }
  }

  /** Abramowitz and Stegun, tables 26.1 and 26.5. */
  @Nested
  class TheNormalDistribution {

    @Test
    void meetsItsTables() {
      assertThat(Normal.probabilityBelow(1)).isCloseTo(0.841344746068543, within(1e-14));
      assertThat(Normal.quantile(0.975)).isCloseTo(1.959963984540054, within(1e-12));
      assertThat(Normal.quantile(0.5)).isCloseTo(0, within(1e-15));
    }

    @Property
    void isSymmetric(@ForAll @DoubleRange(min = 0.001, max = 0.5) double probability) {
      assertThat(Normal.quantile(1 - probability))
          .isCloseTo(-Normal.quantile(probability), within(1e-11));
      assertThat(Normal.probabilityBelow(Normal.quantile(probability)))
          .isCloseTo(probability, within(1e-12));
    }
  }
}
