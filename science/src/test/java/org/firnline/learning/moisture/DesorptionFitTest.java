package org.firnline.learning.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.numerics.SeededUniform;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class DesorptionFitTest {

  private static final double HOUR = 3600;

  private static List<MoistureResult.Warmth> course(double... timesAndTemperatures) {
    List<MoistureResult.Warmth> course = new ArrayList<>();
    for (int i = 0; i < timesAndTemperatures.length; i += 2) {
      course.add(new MoistureResult.Warmth(timesAndTemperatures[i], timesAndTemperatures[i + 1]));
    }
    return course;
  }

  /**
   * Worked examples with E_a 40 kJ/mol, k(20 °C) 5e-5 1/s, C_eq 0.3 % (derived independently): 8 %
   * to 1 % at 40 °C takes 4.6705 h; a ramp from −20 to 40 °C in 5 h leaves 3.8911 %.
   */
  @Nested
  class WorkedExamples {

    @Test
    void atOneTemperature() {
      double left =
          DesorptionFit.moisture(
              5e-5, 40_000, 0.08, 0.003, course(0, 313.15, 4.6705 * HOUR, 313.15));
      assertThat(left).isCloseTo(0.01, within(1e-6));
    }

    @Test
    void alongARamp() {
      double left =
          DesorptionFit.moisture(5e-5, 40_000, 0.08, 0.003, course(0, 253.15, 5 * HOUR, 313.15));
      assertThat(left).isCloseTo(0.038911, within(2e-6));
    }
  }

  private static final DesorptionFit.Belief BELIEF =
      new DesorptionFit.Belief(4e-5, 0.7, 45_000, 10_000, 0.09, 0.3, 0.003);

  private static List<MoistureResult> results(double noise, int seed, double... holds_K) {
    SeededUniform chance = new SeededUniform(seed);
    List<MoistureResult> results = new ArrayList<>();
    results.add(new MoistureResult("early", 0.08, 0.001, course(0, 253.15, 1, 253.15)));
    int number = 0;
    for (double hold : holds_K) {
      for (double hours : new double[] {1, 3, 6}) {
        var seen = course(0, hold, hours * HOUR, hold);
        double left = DesorptionFit.moisture(5e-5, 40_000, 0.08, 0.003, seen);
        results.add(
            new MoistureResult(
                "s" + number,
                Math.max(0, left + noise * chance.normalAt(number++, 0, 0)),
                Math.max(noise, 1e-5),
                seen));
      }
    }
    return results;
  }

  @Test
  void twoTemperaturesGiveThePaceAndTheActivation() {
    var kinetics = DesorptionFit.of(results(0, 1, 293.15, 313.15), BELIEF).orElseThrow();
    assertThat(kinetics.rate()).isCloseTo(5e-5, within(0.01 * 5e-5));
    assertThat(kinetics.activation()).isCloseTo(40_000, within(500.0));
    assertThat(kinetics.start()).isCloseTo(0.08, within(5e-4));
    assertThat(kinetics.activationLearned()).isTrue();
  }

  @Test
  void oneTemperatureLeavesTheActivationToWhatWasBelieved() {
    var kinetics = DesorptionFit.of(results(0.001, 2, 293.15), BELIEF).orElseThrow();
    assertThat(kinetics.activationLearned()).isFalse();
    assertThat(kinetics.rate()).isCloseTo(5e-5, within(3 * kinetics.rateSpread() * 5e-5));
    assertThat(kinetics.activationSpread()).isGreaterThan(7_000);
  }

  /** 50 mg of cake and 1 mg of weighing: moisture is known to 2 % of solids, no better. */
  @Test
  void weightsCarryTheDoubtOfTheBalance() {
    MoistureResult result =
        MoistureResult.ofLoss("7", 51e-6, 50e-6, 1e-6, course(0, 293.15, 1, 293.15));
    assertThat(result.moisture()).isCloseTo(0.02, within(1e-12));
    assertThat(result.error()).isCloseTo(0.02, within(1e-12));
  }

  @Test
  void refusesNonsense() {
    assertThatIllegalArgumentException().isThrownBy(() -> DesorptionFit.of(List.of(), BELIEF));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new MoistureResult("9", -1, 1, course(0, 293.15, 1, 293.15)))
        .withMessageContaining("9");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DesorptionFit.Belief(0, 1, 1, 1, 1, 1, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DesorptionFit.Belief(1e-5, 0, 1, 1, 1, 1, 0));
  }

  @Nested
  class WaterOfARun {

    private Estimate kilograms(double best, double spread) {
      return new Estimate(best, spread, new Provenance.Stated("test"));
    }

    @Test
    void closesWithinItsDoubt() {
      var balance =
          WaterBalance.of(
              kilograms(0.950, 0.003), kilograms(0.940, 0.004), kilograms(0.004, 0.001));
      assertThat(balance.sublimed().best()).isCloseTo(0.946, within(1e-12));
      assertThat(balance.gone().best()).isCloseTo(0.006, within(1e-12));
      assertThat(balance.gone().spread()).isCloseTo(Math.sqrt(26e-6), within(1e-9));
      assertThat(balance.verdicts()).containsExactly(WaterBalance.Verdict.CLOSES);
    }

    @Test
    void saysWhenWaterIsMissingTooMuchOrStillInTheProduct() {
      assertThat(
              WaterBalance.of(kilograms(1, 0.003), kilograms(0.9, 0.003), kilograms(0, 0.001))
                  .verdicts())
          .containsExactly(WaterBalance.Verdict.WATER_MISSING);
      assertThat(
              WaterBalance.of(kilograms(1, 0.003), kilograms(0.5, 0.003), kilograms(0.6, 0.001))
                  .verdicts())
          .containsExactly(WaterBalance.Verdict.PRODUCT_WET, WaterBalance.Verdict.WATER_TOO_MUCH);
    }
  }
}
