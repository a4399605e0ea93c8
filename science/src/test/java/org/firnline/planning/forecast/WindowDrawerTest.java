package org.firnline.planning.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.ForkJoinPool;
import org.firnline.planning.design.DesignExamples;
import org.junit.jupiter.api.Test;

class WindowDrawerTest {

  private static final double RISK = 0.05;

  private final Sharing sharing = DesignExamples.sharing(DesignExamples.vials(120));
  private final WindowWithDoubt map = new WindowDrawer(sharing, RISK).draw(8, 20);

  /** The march of every run, vessel by vessel, against parabolas through nine trajectories. */
  @Test
  void cells_say_what_the_march_of_every_run_says() {
    LoadForecaster forecaster = new LoadForecaster(sharing);
    for (int row = 5; row < 12; row += 2) {
      for (int column = 0; column < 8; column += 3) {
        SampledLoad direct =
            forecaster.run(
                DryingProgram.hold(map.shelves_K().get(row), map.pressures_Pa().get(column)));
        WindowWithDoubt.Cell cell = map.cells().get(row).get(column);
        double time = direct.outlook().lastTime_s().best();
        if (Double.isInfinite(time)) {
          assertThat(cell.lastTime_s().best()).isInfinite();
        } else {
          assertThat(cell.lastTime_s().best()).isCloseTo(time, within(0.01 * time));
        }
        assertThat(cell.overheatingRisk())
            .isCloseTo(direct.overheatingRisk(), within(2.0 / LoadForecaster.RUNS));
      }
    }
  }

  @Test
  void the_confident_line_keeps_the_accepted_risk() {
    LoadForecaster forecaster = new LoadForecaster(sharing);
    for (int column = 0; column < 6; column++) {
      double shelf = map.confidentLimit_K().get(column).orElseThrow();
      double pressure = map.pressures_Pa().get(column);
      assertThat(forecaster.run(DryingProgram.hold(shelf - 0.6, pressure)).overheatingRisk())
          .isLessThanOrEqualTo(RISK);
      assertThat(forecaster.run(DryingProgram.hold(shelf + 0.6, pressure)).overheatingRisk())
          .isGreaterThan(RISK / 2);
    }
  }

  @Test
  void lines_lie_in_their_bands_and_the_confident_one_on_the_cautious_side() {
    for (int column = 0; column < map.pressures_Pa().size(); column++) {
      double middle = map.productLimit_K().get(column).orElseThrow().best();
      map.confidentLimit_K()
          .get(column)
          .ifPresent(limit -> assertThat(limit).isLessThanOrEqualTo(middle));
    }
    assertThat(map.capabilityLimit_K()).hasSize(8);
    assertThat(map.runs()).isEqualTo(128);
  }

  @Test
  void a_small_dryer_has_a_capability_line() {
    Sharing large = DesignExamples.sharing(DesignExamples.vials(6000));
    WindowWithDoubt crowded = new WindowDrawer(large, RISK).draw(3, 12);
    assertThat(crowded.capabilityLimit_K().get(0)).isPresent();
    assertThat(crowded.capabilityLimit_K().get(0).orElseThrow().halfWidth()).isPositive();
  }

  @Test
  void the_answer_is_the_same_bit_for_bit_on_one_thread() throws Exception {
    WindowWithDoubt alone =
        new ForkJoinPool(1).submit(() -> new WindowDrawer(sharing, RISK).draw(8, 20)).get();
    assertThat(alone).isEqualTo(map);
  }
}
