package org.firnline.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DormandPrince5Test {

  /** Errors per step add up over some hundred steps. */
  private static final double STEPS = 100;

  @Nested
  class ClosedForms {

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-9, 1e-12})
    void decayEndsWithinItsTolerance(double tolerance) {
      var steps = new DormandPrince5((t, y, dy) -> dy[0] = -y[0], tolerance, tolerance);
      double[] state = {1};
      steps.march(0, 3, state);
      assertThat(state[0]).isCloseTo(Math.exp(-3), within(STEPS * tolerance));
    }

    @Test
    void anOscillatorComesBackAfterOnePeriod() {
      DormandPrince5.Equations oscillator =
          (t, y, dy) -> {
            dy[0] = y[1];
            dy[1] = -y[0];
          };
      double[] state = {1, 0};
      new DormandPrince5(oscillator, 1e-10, 1e-10, 1e-10).march(0, 2 * Math.PI, state);
      assertThat(state[0]).isCloseTo(1, within(STEPS * 1e-10));
      assertThat(state[1]).isCloseTo(0, within(STEPS * 1e-10));
    }

    @Test
    void aStepNeverPassesItsLimit() {
      var steps = new DormandPrince5((t, y, dy) -> dy[0] = 1, 1e-6, 1e-6);
      double[] state = {0};
      assertThat(steps.step(0, 1e-3, state)).isLessThanOrEqualTo(1e-3);
      steps.march(1e-3, 2, state);
      assertThat(state[0]).isCloseTo(2, within(1e-3));
    }
  }

  @Nested
  class SlopesThatJump {

    /** y grows at rate 1 until x = 1/3, then at rate 10. */
    @Test
    void costNoMoreThanTheTolerance() {
      var steps = new DormandPrince5((x, y, dy) -> dy[0] = x < 1.0 / 3 ? 1 : 10, 1e-9, 1e-9);
      double[] state = {0};
      steps.march(0, 1, state);
      assertThat(state[0]).isCloseTo(1.0 / 3 + 20.0 / 3, within(STEPS * 1e-8));
    }
  }

  @Nested
  class SwappedWithItsVariable {

    /** A body dropped from rest falls 5 m in sqrt(2·5/9.81) s. */
    @Test
    void endsExactlyAtALevel() {
      DormandPrince5.Equations fall =
          (t, y, dy) -> {
            dy[0] = y[1];
            dy[1] = 9.81;
          };
      double[] state = {0, 0};
      new DormandPrince5(fall, 1e-11, 1e-11, 1e-11).march(0, 0.5, state);
      double fallen = state[0];
      state[0] = 0.5;
      new DormandPrince5(new Swapped(fall, 0), 1e-11, 1e-11, 1e-11).march(fallen, 5, state);
      assertThat(state[0]).isCloseTo(Math.sqrt(2 * 5 / 9.81), within(1e-9));
      assertThat(state[1]).isCloseTo(Math.sqrt(2 * 5 * 9.81), within(1e-8));
    }
  }
}
