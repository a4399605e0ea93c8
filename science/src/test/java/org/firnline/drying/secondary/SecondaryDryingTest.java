package org.firnline.drying.secondary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firnline.drying.recipe.Track;
import org.firnline.matter.solute.GordonTaylor1952;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SecondaryDryingTest {

  private static final Desorption DESORPTION = new Desorption(670.179127262, 40_000, 0.003);

  private static Track rampTo40(double start_K, double ramp, double hold_s) {
    double ramped = (313.15 - start_K) / ramp;
    return Track.through(
        List.of(
            new Track.Point(0, start_K),
            new Track.Point(ramped, 313.15),
            new Track.Point(ramped + hold_s, 313.15)));
  }

  /** t = ln((C_0 − C_eq)/(C − C_eq))/k. */
  @Nested
  class AtOneTemperature {

    private final SecondaryDrying drying =
        new SecondaryDrying(DESORPTION, 0.08, Track.constant(313.15));

    @Test
    void reachesItsTargetWhenTheClosedFormSays() {
      double closed = Math.log((0.08 - 0.003) / (0.01 - 0.003)) / DESORPTION.rate(313.15);
      assertThat(closed).isCloseTo(16813.761250939064, within(1e-9 * closed));
      assertThat(drying.timeTo(0.01).orElseThrow()).isCloseTo(closed, within(1e-9 * closed));
    }

    /** Derived example of a published kinetics check: 8 % to 1 % at 40 °C takes 4.6705 h. */
    @Test
    void meetsTheDerivedExample() {
      assertThat(drying.timeTo(0.01).orElseThrow() / 3600).isCloseTo(4.6705, within(5e-5));
    }

    @Test
    void saysThatATargetBelowTheEquilibriumIsNeverReached() {
      assertThat(drying.timeTo(0.002)).isEmpty();
      assertThat(drying.timeTo(0.003)).isEmpty();
    }

    @Test
    void hasReachedATargetItStartsBelow() {
      assertThat(drying.timeTo(0.09)).hasValue(0);
    }
  }

  /** Derived: ramp −20 to 40 °C at 0.2 K/min from 8 %: integral 0.76275, 3.8911 %, then 3.185 h. */
  @Nested
  class AlongARamp {

    private final SecondaryDrying drying =
        new SecondaryDrying(DESORPTION, 0.08, rampTo40(253.15, 0.2 / 60, 1e6));

    @Test
    void losesWhatTheDerivedExampleLoses() {
      assertThat(100 * drying.moisture(18_000)).isCloseTo(3.8911, within(5e-5));
      double exposure = Math.log((0.08 - 0.003) / (drying.moisture(18_000) - 0.003));
      assertThat(exposure).isCloseTo(0.76275, within(5e-6));
    }

    @Test
    void needsTheRestOfTheHold() {
      double hold = (drying.timeTo(0.01).orElseThrow() - 18_000) / 3600;
      assertThat(hold).isCloseTo(3.185, within(5e-4));
    }
  }

  /** Fully specified reference case: ramp and hold from 20 % moisture. */
  @Nested
  class Glass {

    private final GordonTaylor1952 sucrose = new GordonTaylor1952(335.15, 4.7, 138.15);

    @Test
    void isCrossedWhereTheReferenceSays() {
      var drying = new SecondaryDrying(DESORPTION, 0.2, rampTo40(253.15, 0.2 / 60, 21_600));
      SecondaryDrying.GlassMargin least = drying.leastMargin(sucrose, 18_000 + 21_600);
      assertThat(least.margin()).isCloseTo(-43.5800535350308, within(1e-7 * 43.58));
      assertThat(least.time()).isCloseTo(13997.249498124847, within(1e-4 * 13997));
    }

    @Test
    void isNoNearerOnAFineGrid() {
      var drying = new SecondaryDrying(DESORPTION, 0.05, rampTo40(243.15, 0.1 / 60, 21_600));
      double end = 42_000 + 21_600;
      double least = drying.leastMargin(sucrose, end).margin();
      for (double time = 0; time <= end; time += 60) {
        double margin = sucrose.atMoisture(drying.moisture(time)) - drying.temperature().at(time);
        assertThat(least).isLessThanOrEqualTo(margin + 1e-9);
      }
    }
  }
}
