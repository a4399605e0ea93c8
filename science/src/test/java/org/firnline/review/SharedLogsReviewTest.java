package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firnline.logs.Log;
import org.firnline.logs.SharedLogs;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Reviews of whole logs against what the simulation behind them did. Tolerances: phase boundaries
 * 10 min, ends of drying 3 % of primary drying, incidents a few minutes.
 */
class SharedLogsReviewTest {
  private static final Map<String, Review> REVIEWS =
      Stream.of(
              "log01-plain.csv",
              "log02-decimal-comma.csv",
              "log05-quoted-missing.csv",
              "log09-manifold-epoch.csv")
          .collect(
              Collectors.toMap(
                  name -> name,
                  name -> new Reviewer().review(SharedLogs.read(name), ReviewContext.none())));

  private static double second(String file, Instant moment) {
    Log log = SharedLogs.read(file);
    return (moment.toEpochMilli() - log.start().orElseThrow().toEpochMilli()) / 1000.0;
  }

  static List<Truth> boundaries() {
    return Truth.all().stream()
        .filter(
            truth ->
                truth
                    .quantity()
                    .matches(
                        "(start|end) of (freezing|evacuation|primary drying|secondary drying|backfill)"))
        .toList();
  }

  static List<Truth> vesselEnds() {
    return Truth.all().stream().filter(t -> t.quantity().startsWith("end of ice of ")).toList();
  }

  static List<Truth> gaugeEnds() {
    return Truth.all().stream().filter(t -> t.quantity().startsWith("gauge ratio ")).toList();
  }

  static List<Truth> excursions() {
    return Truth.all().stream()
        .filter(t -> t.quantity().contains("product above critical temperature of "))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("boundaries")
  void finds_phase_boundaries(Truth truth) {
    String name = truth.quantity().replaceFirst("(start|end) of ", "");
    Phase phase =
        REVIEWS.get(truth.file()).phases().stream()
            .filter(p -> p.name().label().equals(name))
            .findFirst()
            .orElseThrow();
    Instant found = truth.quantity().startsWith("start") ? phase.start() : phase.end();
    assertThat(second(truth.file(), found)).isCloseTo(truth.value(), within(truth.tolerance()));
  }

  @ParameterizedTest
  @MethodSource("vesselEnds")
  void finds_the_end_of_ice_of_probed_vessels(Truth truth) {
    String channel = truth.quantity().substring("end of ice of ".length());
    Endpoint end =
        REVIEWS.get(truth.file()).endpoints().stream()
            .filter(e -> e.vessel().equals(Optional.of(channel)))
            .findFirst()
            .orElseThrow();
    assertThat(second(truth.file(), end.at().orElseThrow()))
        .isCloseTo(truth.value(), within(truth.tolerance()));
    assertThat(end.low().orElseThrow()).isBeforeOrEqualTo(end.at().orElseThrow());
    assertThat(end.high().orElseThrow()).isAfterOrEqualTo(end.at().orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("gaugeEnds")
  void finds_onset_midpoint_and_end_of_the_gauge_ratio(Truth truth) {
    Endpoint end =
        REVIEWS.get(truth.file()).endpoints().stream()
            .filter(e -> e.method().label().equals(truth.quantity()))
            .findFirst()
            .orElseThrow();
    assertThat(second(truth.file(), end.at().orElseThrow()))
        .isCloseTo(truth.value(), within(truth.tolerance()));
  }

  @ParameterizedTest
  @MethodSource("excursions")
  void finds_start_end_and_peak_of_excursions(Truth truth) {
    String channel = truth.quantity().replaceFirst(".* of ", "");
    Excursion excursion =
        REVIEWS.get(truth.file()).excursions().stream()
            .filter(e -> e.channel().equals(channel))
            .findFirst()
            .orElseThrow();
    double found =
        truth.quantity().startsWith("peak")
            ? excursion.peak_K()
            : second(
                truth.file(),
                truth.quantity().startsWith("start") ? excursion.start() : excursion.end());
    assertThat(found).isCloseTo(truth.value(), within(truth.tolerance()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "log01-plain.csv",
        "log02-decimal-comma.csv",
        "log05-quoted-missing.csv",
        "log09-manifold-epoch.csv"
      })
  void gives_every_finding_its_words_and_its_evidence(String file) {
    Review review = REVIEWS.get(file);
    assertThat(review.findings())
        .allSatisfy(
            finding -> {
              assertThat(finding.text()).isNotBlank().doesNotContain("NaN");
              assertThat(finding.evidence()).isNotEmpty();
            });
  }

  @Nested
  class The_healthy_run {
    private final Review review = REVIEWS.get("log01-plain.csv");

    @Test
    void only_says_that_probed_vessels_dry_first() {
      assertThat(review.findings())
          .singleElement()
          .satisfies(
              finding -> {
                assertThat(finding.kind()).isEqualTo(FindingKind.PROBED_VESSELS_DRY_FIRST);
                assertThat(finding.severity()).isEqualTo(Finding.Severity.INFORMATION);
              });
    }
  }

  @Nested
  class The_run_with_a_leak {
    private final String file = "log02-decimal-comma.csv";
    private final Review review = REVIEWS.get(file);

    @Test
    void finds_the_leak_when_it_happens() {
      Finding leak = finding(review, FindingKind.VACUUM_LEAK);
      assertThat(second(file, leak.start()))
          .isCloseTo(Truth.value(file, "start of vacuum leak"), within(240.0));
      assertThat(second(file, leak.end()))
          .isCloseTo(Truth.value(file, "end of vacuum leak"), within(240.0));
    }

    @Test
    void warns_that_the_ratio_fall_is_not_the_end() {
      assertThat(finding(review, FindingKind.RATIO_FALL_IS_NOT_THE_END).text())
          .contains("do not take this as the end of drying");
    }
  }

  @Nested
  class The_run_with_a_shelf_overshoot {
    private final String file = "log05-quoted-missing.csv";
    private final Review review = REVIEWS.get(file);

    @Test
    void takes_the_critical_temperature_from_the_logs_own_preamble() {
      assertThat(review.criticalTemperature_K().orElseThrow()).isCloseTo(242.15, within(1e-9));
      assertThat(review.criticalTemperatureSource()).contains("line 2");
    }

    @Test
    void says_that_collapse_is_likely_and_why() {
      Finding finding = finding(review, FindingKind.PRODUCT_TOO_WARM);
      assertThat(finding.text()).contains("−31.0 °C").contains("collapse");
      assertThat(finding.causes().get(0)).contains("above its set point");
    }

    @Test
    void finds_the_overshoot_itself() {
      Finding finding = finding(review, FindingKind.SHELF_OVERSHOOT);
      assertThat(second(file, finding.start()))
          .isCloseTo(Truth.value(file, "start of shelf overshoot"), within(240.0));
    }
  }

  @Nested
  class The_manifold_run {
    private final String file = "log09-manifold-epoch.csv";
    private final Review review = REVIEWS.get(file);

    @Test
    void finds_the_opened_port_at_seven_hours() {
      Finding finding = finding(review, FindingKind.PORT_OPENED);
      assertThat(second(file, finding.start()))
          .isCloseTo(Truth.value(file, "start of port opened"), within(60.0));
      assertThat(finding.text()).contains("7.0 h");
    }

    @Test
    void says_that_one_gauge_gives_no_ratio() {
      assertThat(finding(review, FindingKind.SINGLE_GAUGE).text()).contains("gauge ratio");
      assertThat(review.endpoints())
          .noneMatch(end -> end.method().label().startsWith("gauge ratio"));
    }
  }

  private static Finding finding(Review review, FindingKind kind) {
    return review.findings().stream().filter(f -> f.kind() == kind).findFirst().orElseThrow();
  }
}
