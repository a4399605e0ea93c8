package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.firnline.logs.Log;
import org.firnline.logs.TimeBasis;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.TimeAxis;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Ends of ice by everything but thermometers and gauge ratio, on logs whose truth is made up. */
class OtherSignsTest {
  private static final Instant START = Instant.parse("2026-10-12T06:00:00Z");
  private static final double HOUR_S = 3600;

  /** A balance that shows grams, off by one at two weighings, at 27.5 g an hour. */
  private static final double TWO_GRAMS_S = 2 / 27.5 * HOUR_S;

  private static Review review(Log log) {
    return new Reviewer().review(log, ReviewContext.none());
  }

  private static double second(Instant moment) {
    return Duration.between(START, moment).toSeconds();
  }

  private static Endpoint end(Review review, Endpoint.Method method) {
    return review.endpoints().stream()
        .filter(end -> end.method() == method)
        .findFirst()
        .orElseThrow(() -> new AssertionError(method + " not among " + review.endpoints()));
  }

  private static Channel channel(String name, Role role, double[] values) {
    return new Channel(
        name,
        role,
        Confidence.HIGH,
        role.dimension().siUnit(),
        Confidence.HIGH,
        Series.of(values),
        List.of());
  }

  private static Log log(TimeAxis time, List<Channel> channels) {
    return new Log(
        "made up",
        time,
        new TimeBasis(ZoneId.of("UTC"), "made up", true),
        channels,
        List.of(),
        List.of());
  }

  /** A tray of food: 0.5 kg, loses 27.5 g an hour until 5.5 h, weighed every hour to the gram. */
  private static Log weighings(int count) {
    long[] times =
        IntStream.range(0, count).mapToLong(i -> START.toEpochMilli() + i * 3_600_000L).toArray();
    double[] weights =
        IntStream.range(0, count)
            .mapToDouble(i -> Math.rint(500 - 27.5 * Math.min(i, 5.5)) / 1000)
            .toArray();
    return log(TimeAxis.of(times), List.of(channel("tray 1", Role.WEIGHT, weights)));
  }

  @Nested
  class Only_weights_and_times {
    @Test
    void that_the_balance_cannot_tell_apart_give_no_end() {
      long start = START.toEpochMilli();
      long[] times = {start, start + 3_600_000, start + 7_200_000, start + 10_800_000};
      double[] weights = {50, 49.5, 50, 49};
      Log log = log(TimeAxis.of(times), List.of(channel("tray 1", Role.WEIGHT, weights)));
      assertThat(review(log).endpoints()).isEmpty();
    }

    @Test
    void give_the_end_between_two_weighings() {
      Review review = review(weighings(10));
      Endpoint end = end(review, Endpoint.Method.WEIGHT);
      assertThat(second(end.at().orElseThrow())).isCloseTo(5.5 * HOUR_S, within(TWO_GRAMS_S));
      assertThat(second(end.low().orElseThrow())).isEqualTo(5 * HOUR_S);
      assertThat(second(end.high().orElseThrow())).isEqualTo(6 * HOUR_S);
      assertThat(review.verdicts().get(0).state()).isEqualTo(EndVerdict.State.ICE_GONE);
    }

    @Test
    void tell_the_water_that_left() {
      ReviewEstimate lost =
          review(weighings(10)).estimates().stream()
              .filter(estimate -> estimate.name().equals("waterLost"))
              .findFirst()
              .orElseThrow();
      assertThat(lost.value().orElseThrow().best()).isCloseTo(0.151, within(0.001));
      assertThat(lost.unit()).isEqualTo("kg");
    }

    @Test
    void that_still_fall_show_no_end() {
      Review review = review(weighings(5));
      assertThat(end(review, Endpoint.Method.WEIGHT).reached()).isFalse();
      assertThat(review.verdicts().get(0).state()).isEqualTo(EndVerdict.State.CANNOT_TELL);
    }
  }

  @Test
  void the_collector_gets_its_cold_back_when_the_vapor_ends() {
    Log log =
        new SyntheticRun()
            .between(0, SyntheticRun.END_S, (run, i) -> run.collector[i] += 5 * run.vaporShare[i])
            .log();
    Endpoint end = end(review(log), Endpoint.Method.COLLECTOR);
    assertThat(second(end.at().orElseThrow())).isCloseTo(SyntheticRun.LOAD_TO_S, within(HOUR_S));
    assertThat(end.confidence()).isEqualTo(Confidence.LOW);
  }

  @Test
  void the_dew_point_falls_when_the_vapor_ends() {
    SyntheticRun run = new SyntheticRun();
    Log plain = run.log();
    double[] dew = new double[run.vaporShare.length];
    for (int i = 0; i < dew.length; i++) {
      dew[i] = 213.15 + 30 * run.vaporShare[i];
    }
    List<Channel> channels = new ArrayList<>(plain.channels());
    channels.add(channel("dew point", Role.DEW_POINT, dew));
    Review review = review(log(plain.time(), channels));
    Endpoint end = end(review, Endpoint.Method.DEW_POINT);
    assertThat(second(end.at().orElseThrow())).isCloseTo(SyntheticRun.LOAD_TO_S, within(HOUR_S));
    assertThat(review.verdicts().get(0).reasons()).anyMatch(reason -> reason.contains("dew point"));
  }

  @Nested
  class Pressure_rise_tests {
    /** Every two hours for 60 s; over ice the pressure tends to 40 Pa with 0.08 1/s. */
    private final Review review =
        review(
            new SyntheticRun(5)
                .between(SyntheticRun.PUMP_S + HOUR_S, SyntheticRun.HEAT_S, this::test)
                .log());

    private void test(SyntheticRun run, int i) {
      double since = run.second[i] % (2 * HOUR_S);
      double tendsTo = run.second[i] < SyntheticRun.LOAD_TO_S ? 40 : 12;
      if (since < 60) {
        run.truePressure[i] = tendsTo - (tendsTo - 10) * Math.exp(-0.08 * since);
      }
    }

    @Test
    void are_no_alarm() {
      assertThat(review.findings())
          .noneMatch(finding -> finding.severity() == Finding.Severity.ALARM)
          .anyMatch(finding -> finding.kind() == FindingKind.PRESSURE_RISE_TEST);
    }

    @Test
    void show_the_end_between_the_last_that_rises_and_the_next() {
      Endpoint end = end(review, Endpoint.Method.PRESSURE_RISE_TEST);
      assertThat(second(end.low().orElseThrow())).isLessThanOrEqualTo(SyntheticRun.LOAD_TO_S);
      assertThat(second(end.high().orElseThrow()))
          .isBetween(SyntheticRun.LOAD_TO_S, SyntheticRun.LOAD_TO_S + 2.5 * HOUR_S);
    }

    /** The level of the rise that was put in. */
    @Test
    void tell_the_vapor_pressure_of_the_ice() {
      assertThat(review.estimates())
          .filteredOn(estimate -> estimate.name().equals("iceVaporPressure"))
          .filteredOn(estimate -> estimate.value().isPresent())
          .isNotEmpty()
          .first()
          .satisfies(
              ice -> assertThat(ice.value().orElseThrow().best()).isCloseTo(40, within(4.0)));
    }
  }

  @Nested
  class Channels_that_contradict_each_other {
    private Review swapped(Role one, Role other) {
      Log plain = new SyntheticRun().log();
      List<Channel> channels =
          plain.channels().stream()
              .map(c -> c.role() == one ? as(c, other) : c.role() == other ? as(c, one) : c)
              .toList();
      return review(log(plain.time(), channels));
    }

    private Channel as(Channel channel, Role role) {
      double[] values =
          IntStream.range(0, channel.series().size())
              .mapToDouble(channel.series()::value)
              .toArray();
      return channel(channel.name(), role, values);
    }

    private void told(Review review, String word) {
      assertThat(review.findings())
          .filteredOn(finding -> finding.kind() == FindingKind.CHANNELS_CONTRADICT)
          .isNotEmpty()
          .anyMatch(finding -> finding.text().contains(word));
    }

    @Test
    void are_a_collector_above_its_shelf() {
      told(swapped(Role.SHELF, Role.COLLECTOR), "collector must be colder");
    }

    @Test
    void are_gauges_the_wrong_way_round() {
      told(swapped(Role.PRESSURE_CAPACITANCE, Role.PRESSURE_THERMAL), "look swapped");
    }

    @Test
    void is_a_pressure_in_another_unit() {
      Log plain =
          new SyntheticRun()
              .between(0, SyntheticRun.END_S, (run, i) -> run.truePressure[i] /= 100)
              .log();
      told(review(plain), "unit");
    }
  }
}
