package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Confidence;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Incidents put into a made-up run, each to be found, dated, and not mistaken for another. */
class IncidentsTest {
  private static final Instant START = Instant.parse("2026-10-12T06:00:00Z");
  private static final double HOUR_S = 3600;

  private static Review review(Log log) {
    return new Reviewer().review(log, ReviewContext.none());
  }

  private static double second(Instant moment) {
    return (moment.toEpochMilli() - START.toEpochMilli()) / 1000.0;
  }

  private static List<FindingKind> alarms(Review review) {
    return review.findings().stream()
        .filter(finding -> finding.severity() != Finding.Severity.INFORMATION)
        .map(Finding::kind)
        .toList();
  }

  private static Finding finding(Review review, FindingKind kind) {
    return review.findings().stream()
        .filter(f -> f.kind() == kind)
        .findFirst()
        .orElseThrow(() -> new AssertionError(kind + " not among " + review.findings()));
  }

  /** Two hours from 12 h on, up to 15 K. */
  private static double warmth(double second) {
    return 15 * Math.sin(Math.PI * (second - 12 * HOUR_S) / (2 * HOUR_S));
  }

  private static double endOf(Review review, String vessel) {
    return review.endpoints().stream()
        .filter(end -> end.vessel().equals(Optional.of(vessel)))
        .findFirst()
        .flatMap(Endpoint::at)
        .map(IncidentsTest::second)
        .orElse(Double.NaN);
  }

  @Nested
  class A_healthy_run {
    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 60, 300})
    void raises_nothing_at_any_sampling(double step_s) {
      Review review = review(new SyntheticRun(step_s).log());
      assertThat(alarms(review)).isEmpty();
      assertThat(endOf(review, "product 1")).isCloseTo(SyntheticRun.PROBE_1_S, within(600.0));
      assertThat(endOf(review, "product 2")).isCloseTo(SyntheticRun.PROBE_2_S, within(600.0));
    }

    @Test
    void raises_nothing_without_a_logged_set_point() {
      Review review = review(new SyntheticRun().withoutSetPoint().log());
      assertThat(alarms(review)).isEmpty();
      assertThat(review.phases()).hasSize(5);
    }

    @Test
    void says_that_it_has_one_gauge_if_it_has_one() {
      Review review = review(new SyntheticRun().log(false));
      assertThat(alarms(review)).isEmpty();
      assertThat(finding(review, FindingKind.SINGLE_GAUGE)).isNotNull();
    }

    @Test
    void cut_off_before_the_end_is_said_to_be_unfinished() {
      Review review = review(new SyntheticRun().cut(12 * HOUR_S, SyntheticRun.END_S + 60).log());
      assertThat(finding(review, FindingKind.END_NOT_REACHED).severity())
          .isEqualTo(Finding.Severity.INFORMATION);
      assertThat(review.endpoints()).noneMatch(Endpoint::reached);
    }
  }

  @Nested
  class A_power_cut {
    @Test
    void shows_as_missing_rows_with_a_machine_that_has_moved() {
      Review review =
          review(
              new SyntheticRun()
                  .cut(10 * HOUR_S, 10.8 * HOUR_S)
                  .between(
                      10.8 * HOUR_S,
                      11.3 * HOUR_S,
                      (run, i) -> {
                        double since = run.second[i] - 10.8 * HOUR_S;
                        run.truePressure[i] = 10 + 900 * Math.exp(-since / 240);
                        run.collector[i] += 30 * Math.exp(-since / 600);
                        run.product1[i] += 15 * Math.exp(-since / 600);
                      })
                  .log());
      Finding cut = finding(review, FindingKind.POWER_CUT);
      assertThat(second(cut.start())).isCloseTo(10 * HOUR_S, within(61.0));
      assertThat(second(cut.end())).isCloseTo(10.8 * HOUR_S, within(61.0));
      assertThat(cut.text()).contains("product 1");
      assertThat(alarms(review)).doesNotContain(FindingKind.SENSOR_DEAD, FindingKind.GAP);
    }

    @Test
    void is_only_a_gap_if_nothing_moved() {
      Review review = review(new SyntheticRun().cut(10 * HOUR_S, 11 * HOUR_S).log());
      assertThat(alarms(review)).containsExactly(FindingKind.GAP);
    }
  }

  @Nested
  class A_failed_sensor {
    @Test
    void that_freezes_is_found_and_gives_no_end_of_drying() {
      Review review =
          review(
              new SyntheticRun()
                  .between(9 * HOUR_S, SyntheticRun.END_S + 1, (run, i) -> run.product1[i] = 241.2)
                  .log());
      Finding dead = finding(review, FindingKind.SENSOR_DEAD);
      assertThat(second(dead.start())).isCloseTo(9 * HOUR_S, within(300.0));
      assertThat(endOf(review, "product 1")).isNaN();
      assertThat(endOf(review, "product 2")).isCloseTo(SyntheticRun.PROBE_2_S, within(600.0));
    }

    @Test
    void that_jumps_is_no_melted_product() {
      Log log =
          new SyntheticRun()
              .between(11 * HOUR_S, SyntheticRun.END_S + 1, (run, i) -> run.product2[i] = 300)
              .log();
      Review review = new Reviewer().review(log, ReviewContext.withCriticalTemperature(243));
      assertThat(second(finding(review, FindingKind.SENSOR_DEAD).start()))
          .isCloseTo(11 * HOUR_S, within(120.0));
      assertThat(review.excursions()).isEmpty();
      assertThat(endOf(review, "product 2")).isNaN();
    }

    @Test
    void that_falls_silent_is_found() {
      Review review =
          review(
              new SyntheticRun()
                  .between(
                      12 * HOUR_S, SyntheticRun.END_S + 1, (run, i) -> run.product1[i] = Double.NaN)
                  .log());
      assertThat(second(finding(review, FindingKind.SENSOR_DEAD).start()))
          .isCloseTo(12 * HOUR_S, within(120.0));
      assertThat(endOf(review, "product 1")).isNaN();
    }

    @Test
    void that_only_spikes_now_and_then_is_left_alone() {
      SyntheticRun run = new SyntheticRun();
      for (int i = 400; i < run.second.length; i += 301) {
        run.product1[i] += 40;
      }
      assertThat(alarms(review(run.log()))).isEmpty();
    }
  }

  @Nested
  class A_sensor_that_is_off {
    @Test
    void by_the_same_all_along_has_an_offset() {
      Review review =
          review(
              new SyntheticRun()
                  .between(0, SyntheticRun.END_S + 1, (run, i) -> run.product1[i] += 2)
                  .log());
      assertThat(alarms(review)).containsExactly(FindingKind.SENSOR_OFFSET);
      assertThat(endOf(review, "product 1")).isCloseTo(SyntheticRun.PROBE_1_S, within(900.0));
    }

    @Test
    void by_more_and_more_drifts() {
      Review review =
          review(
              new SyntheticRun()
                  .between(
                      0,
                      SyntheticRun.END_S + 1,
                      (run, i) -> run.product1[i] += 4 * run.second[i] / SyntheticRun.END_S)
                  .log());
      assertThat(alarms(review)).containsExactly(FindingKind.SENSOR_DRIFT);
    }
  }

  @Nested
  class A_raised_pressure {
    @Test
    void of_vapor_floats() {
      Review review =
          review(
              new SyntheticRun()
                  .between(7 * HOUR_S, 10 * HOUR_S, (run, i) -> run.truePressure[i] = 17)
                  .log());
      assertThat(alarms(review)).containsExactly(FindingKind.PRESSURE_FLOATS);
      assertThat(second(finding(review, FindingKind.PRESSURE_FLOATS).start()))
          .isCloseTo(7 * HOUR_S, within(120.0));
    }

    @Test
    void of_air_is_a_leak() {
      Review review =
          review(
              new SyntheticRun()
                  .between(
                      8 * HOUR_S,
                      11 * HOUR_S,
                      (run, i) -> {
                        run.truePressure[i] = 16;
                        run.vaporShare[i] *= 0.8;
                      })
                  .log());
      assertThat(alarms(review))
          .containsExactlyInAnyOrder(
              FindingKind.VACUUM_LEAK, FindingKind.RATIO_FALL_IS_NOT_THE_END);
    }

    @Test
    void above_the_triple_point_loses_the_vacuum() {
      Review review =
          review(
              new SyntheticRun()
                  .between(9 * HOUR_S, 11 * HOUR_S, (run, i) -> run.truePressure[i] = 5000)
                  .log());
      assertThat(finding(review, FindingKind.VACUUM_LOST).severity())
          .isEqualTo(Finding.Severity.ALARM);
    }

    @Test
    void for_half_a_minute_again_and_again_is_a_test_of_the_rise() {
      SyntheticRun run = new SyntheticRun(10);
      for (double at = 7 * HOUR_S; at < 16 * HOUR_S; at += HOUR_S) {
        run.between(at, at + 30, (r, i) -> r.truePressure[i] += 5 + (r.second[i] % 30) / 3);
      }
      Review review = review(run.log());
      assertThat(alarms(review)).isEmpty();
      assertThat(finding(review, FindingKind.PRESSURE_RISE_TEST).confidence())
          .isEqualTo(Confidence.HIGH);
    }
  }

  @Nested
  class A_collector {
    @Test
    void that_warms_is_found() {
      Review review =
          review(
              new SyntheticRun()
                  .between(
                      12 * HOUR_S,
                      14 * HOUR_S,
                      (run, i) -> run.collector[i] += warmth(run.second[i]))
                  .log());
      assertThat(alarms(review)).containsExactly(FindingKind.COLLECTOR_WARMING);
    }

    @Test
    void that_warms_with_the_pressure_is_the_first_cause_of_the_rise() {
      Review review =
          review(
              new SyntheticRun()
                  .between(
                      12 * HOUR_S,
                      14 * HOUR_S,
                      (run, i) -> {
                        run.collector[i] += warmth(run.second[i]);
                        run.truePressure[i] += (run.second[i] - 12 * HOUR_S) / 240;
                      })
                  .log());
      assertThat(finding(review, FindingKind.PRESSURE_FLOATS).causes().get(0))
          .contains("collector");
    }
  }

  @Nested
  class Gauges {
    @Test
    void that_differ_without_vapor_disagree() {
      Review review =
          review(
              new SyntheticRun()
                  .between(0, SyntheticRun.END_S + 1, (run, i) -> run.capacitance[i] = 3)
                  .log());
      assertThat(alarms(review)).containsExactly(FindingKind.GAUGES_DISAGREE);
    }
  }

  @Nested
  class Heat_raised_too_early {
    @Test
    void is_found_by_what_remains_of_the_ratio() {
      Review review =
          review(
              new SyntheticRun()
                  .between(
                      17.5 * HOUR_S,
                      SyntheticRun.HEAT_S,
                      (run, i) -> {
                        double set =
                            Math.min(298.15, 253.15 + (run.second[i] - 17.5 * HOUR_S) / 60 * 0.2);
                        run.product1[i] += set - run.shelfSet[i];
                        run.product2[i] += set - run.shelfSet[i];
                        run.shelf[i] += set - run.shelfSet[i];
                        run.shelfSet[i] = set;
                      })
                  .between(
                      SyntheticRun.HEAT_S,
                      SyntheticRun.END_S + 1,
                      (run, i) -> {
                        run.product1[i] += 298.15 - run.shelfSet[i];
                        run.product2[i] += 298.15 - run.shelfSet[i];
                        run.shelf[i] += 298.15 - run.shelfSet[i];
                        run.shelfSet[i] = 298.15;
                      })
                  .log());
      assertThat(finding(review, FindingKind.SECONDARY_BEFORE_END).severity())
          .isEqualTo(Finding.Severity.ALARM);
    }
  }
}
