package org.firnline.drying.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.firnline.drying.PressureSample;
import org.firnline.evidence.Source;
import org.firnline.numerics.Normal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeakEvaluationTest {

  private static final double VOLUME = 0.15;

  private final LeakEvaluation evaluation = new LeakEvaluation();

  private static List<PressureSample> every(double step, int count, DoubleUnaryOperator pressure) {
    return IntStream.rangeClosed(0, count)
        .mapToObj(i -> new PressureSample(i * step, pressure.applyAsDouble(i * step)))
        .toList();
  }

  /** Leak 8e-5 Pa m3/s into 150 L, outgassing of 1.5 Pa that fades in 600 s. */
  private static double mixed(double time) {
    return 2 + 8e-5 / VOLUME * time + 1.5 * (1 - Math.exp(-time / 600));
  }

  private static DoubleUnaryOperator noisy(
      DoubleUnaryOperator pressure, double deviation, long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    return time ->
        pressure.applyAsDouble(time) + deviation * Normal.quantile(chance.nextDouble(1e-9, 1));
  }

  /** Case L05: one hour, a reading each minute; two of its printed pressures pin the curve. */
  @Test
  void tellsLeakAndOutgassingApart() {
    assertThat(mixed(600)).isCloseTo(3.268180838242836, within(1e-12));
    assertThat(mixed(3600)).isCloseTo(5.416281871735, within(1e-12));
    var found =
        (LeakFinding.LeakAndOutgassing)
            evaluation.evaluate(every(60, 60, LeakEvaluationTest::mixed), VOLUME, "1");
    assertThat(found.leak().best()).isCloseTo(8e-5, within(1e-6 * 8e-5));
    assertThat(found.outgassing().best()).isCloseTo(1.5, within(1e-6 * 1.5));
    assertThat(found.fading().best()).isCloseTo(600, within(1e-6 * 600));
    assertThat(found.start().best()).isCloseTo(2, within(1e-6 * 2));
  }

  /** A gauge that scatters by 5 mPa: the truth lies within four standard errors. */
  @Test
  void saysHowSureItIs() {
    var samples = every(60, 60, noisy(LeakEvaluationTest::mixed, 0.005, 11));
    var found = (LeakFinding.LeakAndOutgassing) evaluation.evaluate(samples, VOLUME, "1");
    assertThat(found.leak().spread()).isBetween(1e-8, 1e-5);
    assertThat(found.leak().best()).isCloseTo(8e-5, within(4 * found.leak().spread()));
    assertThat(found.fading().best()).isCloseTo(600, within(4 * found.fading().spread()));
  }

  @Test
  void takesAStraightRiseAsALeak() {
    var exact =
        (LeakFinding.Steady) evaluation.evaluate(every(60, 30, t -> 2 + 1e-3 * t), VOLUME, "1");
    assertThat(exact.leak().best()).isCloseTo(1.5e-4, within(1e-10));
    assertThat(exact.start().best()).isCloseTo(2, within(1e-9));
    var samples = every(60, 30, noisy(t -> 2 + 1e-3 * t, 0.01, 3));
    var scattered = (LeakFinding.Steady) evaluation.evaluate(samples, VOLUME, "1");
    assertThat(scattered.leak().best()).isCloseTo(1.5e-4, within(4 * scattered.leak().spread()));
  }

  /** 0.02 mbar in 60 s into 50 L is 0.017 mbar L/s: arithmetic of a practitioner's question. */
  @Test
  void answersThePractitionersQuestion() {
    var found =
        (LeakFinding.Steady) evaluation.evaluate(every(1, 60, t -> 2 + 2 * t / 60), 0.05, "1");
    assertThat(found.leak().best()).isCloseTo(0.0017, within(0.00004));
  }

  /** Ten minutes of an outgassing that fades in an hour: bent, but not to its end. */
  @Test
  void refusesToTellWhereTheBendIsSlowerThanTheTest() {
    var samples = every(10, 60, t -> 2 + 5e-4 * t + 4 * (1 - Math.exp(-t / 3600)));
    var found = (LeakFinding.CannotTell) evaluation.evaluate(samples, VOLUME, "1");
    assertThat(found.reason()).contains("slower than the test");
    double lastSlope = 5e-4 + 4.0 / 3600 * Math.exp(-525.0 / 3600);
    assertThat(found.greatestLeak()).isCloseTo(VOLUME * lastSlope, within(0.01 * 2.3e-4));
    assertThat(found.greatestLeak()).isGreaterThan(VOLUME * 5e-4);
  }

  @Test
  void refusesToExplainARiseThatGrowsSteeper() {
    var samples = every(60, 60, t -> 2 + 1e-4 * t + 2e-7 * t * t);
    var found = (LeakFinding.CannotTell) evaluation.evaluate(samples, VOLUME, "1");
    assertThat(found.reason()).containsAnyOf("warming", "slower than the test");
  }

  @Test
  void findsAnOutgassingChamberWithoutALeak() {
    var samples = every(60, 60, noisy(t -> 2 + 3 * (1 - Math.exp(-t / 400)), 0.003, 9));
    var found = (LeakFinding.LeakAndOutgassing) evaluation.evaluate(samples, VOLUME, "1");
    assertThat(Math.abs(found.leak().best())).isLessThan(4 * found.leak().spread() + 1e-7);
    assertThat(found.outgassing().best()).isCloseTo(3, within(0.05));
  }

  /** 2e-2 mbar L/s: 0.60, 0.12, 0.024 and 0.006 Pa/min in 200, 1000, 5000 and 20 000 L. */
  @ParameterizedTest
  @CsvSource({"0.2, 0.60", "1, 0.12", "5, 0.024", "20, 0.006"})
  void knowsWhatTheLimitAllows(double volume, double rise_Pa_per_min) {
    LeakLimit limit = LeakLimit.published().get(0);
    assertThat(limit.rise(volume) * 60).isCloseTo(rise_Pa_per_min, within(1e-12));
  }

  @Test
  void namesTheSourcesOfItsLimits() {
    assertThat(LeakLimit.published())
        .hasSize(3)
        .allSatisfy(
            limit -> {
              assertThat(limit.source().status()).isEqualTo(Source.Status.FOUND);
              assertThat(limit.rate()).isBetween(1e-3, 2e-3);
            });
  }

  @Test
  void refusesWhatIsNoTest() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> evaluation.evaluate(every(1, 5, t -> 2 + t), VOLUME, "x"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> evaluation.evaluate(every(1, 20, t -> 2 + t), 0, "x"));
    var backward = List.copyOf(every(-1, 20, t -> 200 + t));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> evaluation.evaluate(backward, VOLUME, "x"))
        .withMessageContaining("out of order");
  }
}
