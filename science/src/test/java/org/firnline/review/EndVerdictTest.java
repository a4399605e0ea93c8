package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Confidence;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the methods together make of a run whose ends of ice are known. */
class EndVerdictTest {
  private static final double HOUR_S = 3600;

  private static List<EndVerdict> verdicts(Log log) {
    return new Reviewer().review(log, ReviewContext.none()).verdicts();
  }

  private static double second(Instant moment) {
    return Duration.between(Instant.parse("2026-10-12T06:00:00Z"), moment).toSeconds();
  }

  @Nested
  class With_both_gauges_and_thermometers {
    private final List<EndVerdict> verdicts = verdicts(new SyntheticRun().log());

    @Test
    void the_load_ends_with_the_gauges_and_after_its_probed_vessels() {
      EndVerdict load = verdicts.get(0);
      assertThat(load.vessel()).isEmpty();
      assertThat(load.state()).isEqualTo(EndVerdict.State.ICE_GONE);
      assertThat(second(load.at().orElseThrow())).isCloseTo(SyntheticRun.LOAD_TO_S, within(HOUR_S));
      assertThat(load.low().orElseThrow()).isBeforeOrEqualTo(load.at().orElseThrow());
      assertThat(load.high().orElseThrow()).isAfterOrEqualTo(load.at().orElseThrow());
      assertThat(load.confidence()).isEqualTo(Confidence.HIGH);
      assertThat(load.reasons())
          .anyMatch(reason -> reason.contains("gauge ratio end"))
          .anyMatch(reason -> reason.contains("last probed vessel"));
    }

    @Test
    void each_probed_vessel_has_its_own_and_says_that_it_is_early() {
      assertThat(verdicts).hasSize(3);
      EndVerdict first = verdicts.get(1);
      assertThat(first.vessel()).contains("product 1");
      assertThat(second(first.at().orElseThrow())).isCloseTo(SyntheticRun.PROBE_1_S, within(600.0));
      assertThat(first.reasons()).anyMatch(reason -> reason.contains("rest of the load"));
    }
  }

  @Test
  void thermometers_alone_give_the_load_a_soak_and_a_low_confidence() {
    EndVerdict load = verdicts(new SyntheticRun().log(false)).get(0);
    assertThat(load.state()).isEqualTo(EndVerdict.State.ICE_GONE);
    assertThat(second(load.at().orElseThrow())).isGreaterThan(SyntheticRun.PROBE_2_S);
    assertThat(load.confidence()).isEqualTo(Confidence.LOW);
    assertThat(load.reasons()).anyMatch(reason -> reason.contains("soak"));
  }

  @Test
  void a_log_cut_off_in_primary_drying_still_holds_ice() {
    Log log = new SyntheticRun().cut(12 * HOUR_S, SyntheticRun.END_S + 60).log();
    List<EndVerdict> verdicts = verdicts(log);
    assertThat(verdicts)
        .extracting(EndVerdict::state)
        .containsOnly(EndVerdict.State.ICE_LEFT)
        .hasSize(3);
    assertThat(verdicts.get(0).confidence()).isEqualTo(Confidence.HIGH);
    assertThat(verdicts.get(0).at()).isEmpty();
  }

  @Test
  void a_failed_sensor_makes_its_vessel_unsure() {
    Log log =
        new SyntheticRun()
            .between(9 * HOUR_S, SyntheticRun.END_S + 1, (run, i) -> run.product1[i] = 241.2)
            .log();
    EndVerdict vessel = verdicts(log).get(1);
    assertThat(vessel.state()).isEqualTo(EndVerdict.State.CANNOT_TELL);
    assertThat(vessel.confidence()).isEqualTo(Confidence.LOW);
    assertThat(vessel.reasons()).anyMatch(reason -> reason.contains("fails"));
  }

  @Test
  void a_time_belongs_to_ice_that_is_gone() {
    assertThatThrownBy(
            () ->
                new EndVerdict(
                    Optional.empty(),
                    EndVerdict.State.ICE_GONE,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Confidence.LOW,
                    List.of("why")))
        .hasMessageContaining("ice gone");
    assertThatThrownBy(
            () -> EndVerdict.ofLoad(EndVerdict.State.ICE_LEFT, Confidence.LOW, List.of()))
        .hasMessageContaining("reason");
  }
}
