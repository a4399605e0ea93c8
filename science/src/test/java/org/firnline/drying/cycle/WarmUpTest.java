package org.firnline.drying.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WarmUpTest {

  /**
   * Arithmetic of a practitioner's question: 200 g of ice in a flask, 0.22 W/K: time constant 30
   * min, from −25 to −10 °C in 11 min; the room is taken at 25 °C.
   */
  @Test
  void answersThePowerCutQuestion() {
    var flask = new WarmUp(0.2 * 2_000, 0.22, 298.15);
    assertThat(flask.timeConstant() / 60).isCloseTo(30, within(0.5));
    assertThat(flask.timeTo(248.15, 263.15) / 60).isCloseTo(11, within(0.5));
  }

  @Test
  void undoesItself() {
    var vessel = new WarmUp(10, 0.01, 295);
    double time = vessel.timeTo(235, 242);
    assertThat(vessel.temperature(235, time)).isCloseTo(242, within(1e-9));
  }

  @Test
  void knowsItsLimits() {
    var vessel = new WarmUp(10, 0.01, 240);
    assertThat(vessel.timeTo(235, 242)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(vessel.timeTo(245, 242)).isZero();
  }
}
