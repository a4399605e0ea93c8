package org.firnline.drying.pressurerise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.firnline.matter.WagnerEtAl2011Ice;
import org.junit.jupiter.api.Test;

class PressureRiseTest {

  private static final double VOLUME = 0.1;
  private static final double GAS = 258.15;
  private static final double[] SECONDS = {0, 1, 2, 5, 10, 15, 25};

  private static PressureRise example() {
    double front = new WagnerEtAl2011Ice().pressure(239.15);
    double conductance = 200 * 3.142e-4 / 1.5e5;
    return new PressureRise(front, 8, PressureRise.rate(conductance, GAS, VOLUME), 0);
  }

  /** Fully specified reference case. */
  @Test
  void meetsTheReferenceCase() {
    PressureRise rise = example();
    assertThat(rise.rate()).isCloseTo(0.49912635771220354, within(1e-9));
    double[] expected = {
      8.0,
      14.637786344362848,
      18.667326113856642,
      23.499950379993887,
      24.7778336759512,
      24.883187930516712,
      24.892589893584315
    };
    for (int i = 0; i < SECONDS.length; i++) {
      assertThat(rise.at(SECONDS[i])).isCloseTo(expected[i], within(1e-9 * expected[i]));
    }
  }

  /** dP/dt = k (P_i − P) + X by a central difference. */
  @Test
  void solvesItsOwnBalance() {
    PressureRise rise = new PressureRise(25, 8, 0.5, 0.02);
    double step = 1e-4;
    double slope = (rise.at(2 + step) - rise.at(2 - step)) / (2 * step);
    assertThat(slope).isCloseTo(0.5 * (25 - rise.at(2)) + 0.02, within(1e-6));
  }
}
