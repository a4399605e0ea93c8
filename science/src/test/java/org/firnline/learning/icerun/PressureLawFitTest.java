package org.firnline.learning.icerun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.HeatTransfer;
import org.firnline.numerics.SeededUniform;
import org.junit.jupiter.api.Test;

class PressureLawFitTest {

  private static final HeatTransfer TRUTH = new HeatTransfer(10, 1.04, 0.0231);

  private static PressurePoint point(double pressure, double value, double spread) {
    return new PressurePoint(pressure, new Estimate(value, spread, new Provenance.Stated("test")));
  }

  /** Three exact points fix three constants. */
  @Test
  void goesThroughThreePoints() {
    PressureLaw law =
        PressureLawFit.through(
                List.of(
                    point(5, TRUTH.at(5), 0.3),
                    point(15, TRUTH.at(15), 0.3),
                    point(40, TRUTH.at(40), 0.3)))
            .orElseThrow();
    assertThat(law.form()).isEqualTo(PressureLaw.Form.LEVELING);
    assertThat(law.heatTransfer().contact()).isCloseTo(10, within(1e-6));
    assertThat(law.heatTransfer().gas()).isCloseTo(1.04, within(1e-6));
    assertThat(law.heatTransfer().leveling()).isCloseTo(0.0231, within(1e-7));
    assertThat(law.spreadAt(15)).as("at a point: the point's own").isCloseTo(0.3, within(1e-4));
    assertThat(law.lowest()).isEqualTo(5);
    assertThat(law.highest()).isEqualTo(40);
  }

  /** Bands of one deviation around noisy points hold the true curve about 68 times in 100. */
  @Test
  void bandsHoldTheTruthAsOftenAsTheySay() {
    SeededUniform chance = new SeededUniform(21);
    double[] pressures = {4, 8, 15, 25, 40, 60};
    int inside = 0;
    for (int trial = 0; trial < 200; trial++) {
      List<PressurePoint> points = new ArrayList<>();
      for (int i = 0; i < pressures.length; i++) {
        double noise = 0.02 * TRUTH.at(pressures[i]);
        points.add(
            point(
                pressures[i],
                TRUTH.at(pressures[i]) + noise * chance.normalAt(trial, i, 0),
                noise));
      }
      PressureLaw law = PressureLawFit.through(points).orElseThrow();
      if (Math.abs(law.heatTransfer().at(12) - TRUTH.at(12)) < law.spreadAt(12)) {
        inside++;
      }
    }
    assertThat(inside).as("of 200; 4 binomial deviations are 26").isBetween(110, 163);
  }

  @Test
  void becomesALineWhereNoLevelingShows() {
    PressureLaw law =
        PressureLawFit.through(List.of(point(5, 12, 0.2), point(10, 14, 0.2), point(20, 18.5, 0.2)))
            .orElseThrow();
    assertThat(law.form()).isEqualTo(PressureLaw.Form.LINE);
    assertThat(law.heatTransfer().leveling()).isZero();
    assertThat(law.deviations().get(2)).isZero();
  }

  @Test
  void becomesAConstantWhereNoRiseShows() {
    PressureLaw law =
        PressureLawFit.through(List.of(point(5, 15, 0.2), point(10, 14, 0.2), point(20, 13, 0.2)))
            .orElseThrow();
    assertThat(law.form()).isEqualTo(PressureLaw.Form.CONSTANT);
    assertThat(law.heatTransfer().contact()).isCloseTo(14, within(1e-9));
    assertThat(law.deviations().get(0)).isCloseTo(0.2 / Math.sqrt(3), within(1e-9));
  }

  @Test
  void needsThreePressures() {
    assertThat(PressureLawFit.through(List.of(point(5, 15, 0.2), point(10, 17, 0.2)))).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> point(5, 15, 0));
  }
}
