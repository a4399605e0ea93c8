package org.firnline.review.simulated;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Reviews of healthy simulated runs against the truth behind them: invented vials, sensors with
 * noise, lag and offset, 5 s to 5 min between rows, from all channels down to one. Fixed draws.
 *
 * <p>{@code -Dfirnline.sweep.runs=200} draws more; {@code scripts/review-sweep.sh} does so and
 * keeps the table.
 */
class SimulatedTruthTest {
  private static final int RUNS = Integer.getInteger("firnline.sweep.runs", 80);

  private static final TruthSweep sweep = TruthSweep.of(RUNS);

  @BeforeAll
  static void keepTheTable() throws IOException {
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target", "review-sweep.txt"), RUNS + " runs\n" + sweep.table());
  }

  @Test
  void healthy_runs_raise_no_alarm() {
    assertThat(sweep.alarms()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "product thermometer",
        "product thermometer, no other channel",
        "gauge ratio onset",
        "gauge ratio midpoint",
        "gauge ratio end",
        "gauge ratio settled",
        "vapor rate",
        TruthSweep.LOAD_BY_GAUGES
      })
  void ends_lie_within_two_percent_in_the_middle_and_six_at_worst(String what) {
    List<TruthSweep.Answer> answers = sweep.answers(what);
    assertThat(answers).hasSizeGreaterThan(RUNS / 16);
    assertThat(TruthSweep.median(answers)).isLessThanOrEqualTo(0.02);
    assertThat(TruthSweep.worst(answers)).isLessThanOrEqualTo(0.06);
  }

  /** The share of the thermometers, of the marks of the ratio, and of the verdict by gauges. */
  @Test
  void bands_hold_nine_truths_in_ten() {
    assertThat(TruthSweep.coverage(sweep.answers("product thermometer"))).isBetween(0.85, 0.95);
    assertThat(TruthSweep.coverage(sweep.answers(TruthSweep.LOAD_BY_GAUGES))).isBetween(0.85, 0.95);
    List<TruthSweep.Answer> marks =
        Stream.of("gauge ratio onset", "gauge ratio midpoint", "gauge ratio end")
            .flatMap(mark -> sweep.answers(mark).stream())
            .toList();
    assertThat(TruthSweep.coverage(marks)).isBetween(0.85, 0.95);
  }

  /** Nobody can read the last vessel from a few thermometers; their wide band must still hold. */
  @Test
  void thermometers_alone_give_the_load_a_band_that_mostly_holds() {
    assertThat(TruthSweep.coverage(sweep.answers(TruthSweep.LOAD_BY_THERMOMETERS)))
        .isGreaterThan(0.75);
  }

  /** Where the log has a shelf; without one the start of secondary drying is a guess. */
  @Test
  void phase_boundaries_lie_within_five_minutes() {
    sweep.boundaries().entrySet().stream()
        .filter(entry -> !entry.getKey().endsWith("no shelf"))
        .flatMap(entry -> entry.getValue().stream())
        .forEach(answer -> assertThat(Math.abs(answer.error_s())).isLessThanOrEqualTo(300));
    assertThat(sweep.boundaries()).hasSizeGreaterThanOrEqualTo(5);
  }
}
