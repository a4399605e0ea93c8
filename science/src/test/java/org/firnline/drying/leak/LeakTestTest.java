package org.firnline.drying.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LeakTestTest {

  private static final double VOLUME = 0.15;

  private static double[] times(double end) {
    return IntStream.rangeClosed(0, 60).mapToDouble(i -> end * i / 60).toArray();
  }

  private static double[] rise(double[] times, double leak, double outgassing, double tau) {
    double[] pressures = new double[times.length];
    for (int i = 0; i < times.length; i++) {
      pressures[i] = 2 + leak / VOLUME * times[i] + outgassing * (1 - Math.exp(-times[i] / tau));
    }
    return pressures;
  }

  /** The equation itself with a leak of 8e-5 Pa m3/s and 1.5 Pa of outgassing within 600 s. */
  @Test
  void tellsLeakAndOutgassingApart() {
    double[] times = times(3600);
    LeakTest test = LeakTest.of(times, rise(times, 8e-5, 1.5, 600), VOLUME);
    assertThat(test.separable()).isTrue();
    assertThat(test.leak()).isCloseTo(8e-5, within(8e-11));
    assertThat(test.outgassing()).isCloseTo(1.5, within(1.5e-6));
    assertThat(test.time()).isCloseTo(600, within(6e-4));
    assertThat(test.start()).isCloseTo(2, within(2e-6));
  }

  @Test
  void refusesToTellThemApartWhenTheBendIsSlowerThanTheTest() {
    double[] times = times(600);
    LeakTest test = LeakTest.of(times, rise(times, 8e-5, 1.5, 5_000), VOLUME);
    assertThat(test.separable()).isFalse();
    assertThat(test.leak()).isGreaterThan(8e-5);
  }

  /** 0.02 mbar in 60 s into 50 L is 0.017 mbar L/s: arithmetic of a practitioner's question. */
  @Test
  void aStraightLineIsALeak() {
    double[] times = times(60);
    double[] pressures = new double[times.length];
    for (int i = 0; i < times.length; i++) {
      pressures[i] = 2 + 2.0 / 60 * times[i];
    }
    LeakTest test = LeakTest.of(times, pressures, 0.05);
    assertThat(test.leak()).isCloseTo(0.0017, within(0.00004));
  }
}
