package org.firnline.learning.rise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.PressureSample;
import org.firnline.drying.pressurerise.RiseSetup;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.junit.jupiter.api.Test;

class RiseLessonTest {

  private static final RiseSetup SETUP = new RiseSetup(0.100, 258.15, 200 * 3.142e-4, 8);
  private static final double RATE = 0.49913;
  private static final double END = 24.898;

  private static Estimate leak(double best, double spread) {
    return new Estimate(best, spread, new Provenance.Stated("test"));
  }

  private static List<PressureSample> samples(double leak, int seconds) {
    List<PressureSample> samples = new ArrayList<>();
    double end = END + leak / RATE;
    for (double time = 0.5; time <= seconds; time += 0.5) {
      samples.add(new PressureSample(time, end - (end - 8) * Math.exp(-RATE * time)));
    }
    return samples;
  }

  /**
   * Worked example (derived): V 0.100 m3, 200 vials of 3.142e-4 m2, 258.15 K, P₀ 8 Pa, k 0.49913
   * 1/s and P_i 24.898 Pa must give T_s −34.00 °C and R_p 1.5e5 m/s.
   */
  @Test
  void recoversTheWorkedExample() {
    RiseLesson lesson = RiseLesson.of(SETUP, samples(0, 25), leak(0, 0), 0.2, "A").orElseThrow();
    assertThat(lesson.estimate().frontTemperature().best()).isCloseTo(239.15, within(0.005));
    assertThat(lesson.estimate().resistance().best()).isCloseTo(1.5e5, within(1e-4 * 1.5e5));
    assertThat(lesson.icePressure()).isCloseTo(END, within(1e-3));
    assertThat(lesson.cautions()).isEmpty();
  }

  /** P_i + X/k is all that shows: a leak taken for nothing makes the ice look warmer. */
  @Test
  void aLeakThatIsNotKnownLooksLikeWarmerIce() {
    RiseLesson blind = RiseLesson.of(SETUP, samples(0.5, 25), leak(0, 0), 0.2, "B").orElseThrow();
    assertThat(blind.icePressure()).isCloseTo(END + 0.5 / RATE, within(1e-3));
    RiseLesson told = RiseLesson.of(SETUP, samples(0.5, 25), leak(0.5, 0), 0.2, "C").orElseThrow();
    assertThat(told.icePressure()).isCloseTo(END, within(1e-3));
  }

  @Test
  void theDoubtAboutTheLeakIsCarried() {
    RiseLesson lesson = RiseLesson.of(SETUP, samples(0, 25), leak(0, 0.2), 0.2, "D").orElseThrow();
    assertThat(lesson.icePressureSpread()).isCloseTo(0.2 / RATE, within(0.02 * 0.2 / RATE));
    assertThat(lesson.cautions()).containsExactly(RiseLesson.Caution.LEAK_DECIDES);
  }

  @Test
  void saysWhenItMayNotBeTrusted() {
    assertThat(RiseLesson.of(SETUP, samples(0, 25), leak(0, 0), 0.6, "E").orElseThrow().cautions())
        .containsExactly(RiseLesson.Caution.LATE);
    assertThat(RiseLesson.of(SETUP, samples(0, 25), leak(0, 0), 0.8, "F").orElseThrow().cautions())
        .containsExactly(RiseLesson.Caution.TOO_LATE);
    assertThat(
            RiseLesson.of(SETUP, samples(0, 4), leak(0, 0), Double.NaN, "G")
                .orElseThrow()
                .cautions())
        .containsExactlyInAnyOrder(
            RiseLesson.Caution.PROGRESS_UNKNOWN, RiseLesson.Caution.TOO_SHORT);
  }
}
