package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.firnline.units.Unit;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Layouts seen in the wild, one small file each, and what must be read from them. */
class LayoutsTest {
  /** Conversions round once or twice. */
  private static final double ROUNDING = 1e-9;

  private static Reading read(String name) {
    return read(name, ReadingChoices.none());
  }

  private static Reading read(String name, ReadingChoices choices) {
    return new LogReader().read(name, SharedLogs.bytes("layouts/" + name), choices);
  }

  private static Reading in(String zone, String name) {
    return read(name, ReadingChoices.none().withZone(ZoneId.of(zone)));
  }

  private static List<Instant> times(Reading reading) {
    Log log = reading.log().orElseThrow();
    return IntStream.range(0, log.time().size()).mapToObj(log.time()::instant).toList();
  }

  private static Channel channel(Reading reading, String name) {
    return reading.log().orElseThrow().channels().stream()
        .filter(channel -> channel.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static double celsius(double value) {
    return Unit.parse("°C").toSi(value);
  }

  private static List<Question.Kind> questions(Reading reading) {
    return reading.questions().stream().map(Question::kind).toList();
  }

  private static void has(Reading reading, String name, Role role, double first) {
    Channel channel = channel(reading, name);
    assertThat(channel.role()).isEqualTo(role);
    assertThat(channel.series().value(0)).isCloseTo(first, within(ROUNDING));
  }

  @Nested
  class X01_plain_UTC {
    @Test
    void needs_no_question() {
      Reading reading = read("x01.txt");
      assertThat(reading.questions()).isEmpty();
      assertThat(reading.log().orElseThrow().channels()).hasSize(4);
      assertThat(times(reading))
          .containsExactly(
              Instant.parse("2026-10-12T08:00:00Z"), Instant.parse("2026-10-12T08:01:00Z"));
      has(reading, "pressure_mbar", Role.PRESSURE, 8.1);
    }
  }

  @Nested
  class X02_semicolon_and_decimal_comma_in_windows_1252 {
    @Test
    void drops_the_empty_last_column_and_reads_local_time() {
      Reading reading = in("Europe/Berlin", "x02.txt");
      assertThat(reading.layout().encoding()).isEqualTo("windows-1252");
      assertThat(reading.log().orElseThrow().channels()).hasSize(4);
      assertThat(times(reading).get(0)).isEqualTo(Instant.parse("2026-10-12T08:00:00Z"));
      assertThat(reading.questions()).isEmpty();
      has(reading, "Eis", Role.COLLECTOR, celsius(-54.2));
      has(reading, "Druck", Role.PRESSURE, 8.1);
    }
  }

  @Nested
  class X03_US_dates_on_a_twelve_hour_clock {
    private final Reading reading = read("x03.txt");

    @Test
    void puts_one_o_clock_after_half_past_twelve() {
      assertThat(times(reading).get(1).getEpochSecond() - times(reading).get(0).getEpochSecond())
          .isEqualTo(30);
      assertThat(times(reading).get(1).toString()).contains("T13:00:00");
    }

    @Test
    void converts_Fahrenheit_and_millitorr() {
      has(reading, "Shelf", Role.SHELF, Unit.parse("°F").toSi(-10));
      assertThat(channel(reading, "Shelf").series().value(0))
          .isCloseTo(celsius(-23.3), within(0.05));
      assertThat(channel(reading, "Vac").series().value(1)).isCloseTo(54, within(0.05));
    }

    @Test
    void asks_which_comes_first_day_or_month() {
      assertThat(questions(reading)).contains(Question.Kind.DATE_ORDER);
      Reading told = read("x03.txt", ReadingChoices.none().withDateOrder(DateOrder.MONTH_DAY_YEAR));
      assertThat(questions(told)).doesNotContain(Question.Kind.DATE_ORDER);
      assertThat(times(told).get(0).toString()).startsWith("2026-10-12");
    }
  }

  @Nested
  class X04_preamble_and_a_row_of_units {
    private final Reading reading = read("x04.txt");

    @Test
    void counts_seconds_from_the_start_in_the_preamble() {
      assertThat(times(reading))
          .containsExactly(
              Instant.parse("2026-10-12T08:00:00Z"), Instant.parse("2026-10-12T08:00:30Z"));
      assertThat(reading.log().orElseThrow().basis().startKnown()).isTrue();
    }

    @Test
    void takes_units_from_their_own_row() {
      has(reading, "Chamber P", Role.PRESSURE, 8.1);
      has(reading, "Prod B", Role.PRODUCT, celsius(-39.2));
      assertThat(reading.layout().headerLines()).containsExactly(6L, 7L);
    }
  }

  @Nested
  class X05_three_header_rows_with_merged_cells {
    private final Reading reading = read("x05.txt");

    @Test
    void joins_the_rows_to_names() {
      assertThat(reading.log().orElseThrow().channels())
          .extracting(Channel::name)
          .containsExactly(
              "Shelf In",
              "Shelf Out",
              "Product TC1",
              "Product TC2",
              "Pressure CM",
              "Pressure Pirani");
    }

    @Test
    void reads_decimal_hours_and_a_ratio_of_1_6() {
      assertThat(reading.log().orElseThrow().time().elapsed_s(1))
          .isCloseTo(29.88, within(ROUNDING));
      has(reading, "Pressure CM", Role.PRESSURE_CAPACITANCE, 8.0);
      has(reading, "Pressure Pirani", Role.PRESSURE_THERMAL, 12.8);
    }
  }

  @Nested
  class X06_UTF_16_with_an_announced_delimiter {
    @Test
    void keeps_comma_milliseconds_and_exponents_whole() {
      Reading reading = read("x06.txt");
      assertThat(reading.layout().encoding()).isEqualTo("UTF-16LE");
      assertThat(times(reading).get(1).toEpochMilli() - times(reading).get(0).toEpochMilli())
          .isEqualTo(5000);
      has(reading, "T_Platte", Role.SHELF, celsius(-40));
      assertThat(channel(reading, "p_Kammer").series().asWritten(0)).isEqualTo(0.081);
      assertThat(questions(reading)).contains(Question.Kind.UNIT_OR_ROLE);
    }
  }

  @Nested
  class X08_elapsed_time_beyond_a_day {
    @Test
    void goes_on_counting() {
      Reading reading = read("x08.txt");
      assertThat(times(reading).get(2).getEpochSecond()).isEqualTo(91_815);
      assertThat(reading.log().orElseThrow().basis().startKnown()).isFalse();
      assertThat(reading.guesses()).anyMatch(guess -> guess.choice().equals("start"));
    }
  }

  @Nested
  class X09_no_header_at_all {
    @Test
    void reads_spreadsheet_serials_and_asks_about_proposed_roles() {
      Reading reading = read("x09.txt");
      assertThat(times(reading))
          .containsExactly(
              Instant.parse("2026-10-12T08:00:00Z"), Instant.parse("2026-10-12T08:01:00Z"));
      has(reading, "column 2", Role.SHELF, celsius(-40));
      has(reading, "column 3", Role.PRODUCT, celsius(-39.6));
      has(reading, "column 4", Role.PRESSURE, 8.1);
      has(reading, "column 5", Role.COLLECTOR, celsius(-54.2));
      assertThat(questions(reading)).filteredOn(Question.Kind.UNIT_OR_ROLE::equals).hasSize(4);
    }
  }

  @Nested
  class X10_a_zoo_of_sentinels {
    private final Reading reading = read("x10.txt");

    private List<Quality> qualities(String name) {
      Channel channel = channel(reading, name);
      return IntStream.range(0, 5).mapToObj(channel.series()::quality).toList();
    }

    @Test
    void gives_each_its_meaning() {
      assertThat(qualities("p_mTorr"))
          .containsExactly(
              Quality.OVER_RANGE,
              Quality.OVER_RANGE,
              Quality.UNDER_RANGE,
              Quality.GOOD,
              Quality.BAD);
      assertThat(qualities("tc1_C"))
          .containsExactly(
              Quality.GOOD, Quality.GOOD, Quality.OPEN_SENSOR, Quality.OPEN_SENSOR, Quality.GOOD);
      assertThat(qualities("tc2_C"))
          .containsExactly(
              Quality.MISSING,
              Quality.OPEN_SENSOR,
              Quality.OPEN_SENSOR,
              Quality.MISSING,
              Quality.MISSING);
      assertThat(qualities("trap_C").get(0)).isEqualTo(Quality.OFF);
    }

    @Test
    void makes_a_number_of_none_but_keeps_limits_and_figures() {
      Channel pressure = channel(reading, "p_mTorr");
      assertThat(pressure.series().value(1)).isNaN();
      assertThat(pressure.series().asWritten(1)).isEqualTo(1000);
      assertThat(pressure.series().asWritten(2)).isEqualTo(1);
      assertThat(channel(reading, "tc1_C").series().asWritten(3)).isEqualTo(-999.9);
    }
  }

  @Nested
  class X11_the_hour_that_comes_twice {
    @Test
    void is_told_by_the_step_back() {
      assertThat(times(in("Europe/London", "x11.txt")))
          .containsExactly(
              Instant.parse("2026-10-25T00:58:00Z"),
              Instant.parse("2026-10-25T00:59:00Z"),
              Instant.parse("2026-10-25T01:00:00Z"),
              Instant.parse("2026-10-25T01:01:00Z"));
    }
  }

  @Nested
  class X13_a_logger_that_knows_no_summer_time {
    @Test
    void is_told_by_stamps_that_run_through_the_change() {
      Reading reading = in("Europe/London", "x13.txt");
      assertThat(times(reading))
          .containsExactly(
              Instant.parse("2026-10-25T00:58:00Z"),
              Instant.parse("2026-10-25T00:59:00Z"),
              Instant.parse("2026-10-25T01:00:00Z"),
              Instant.parse("2026-10-25T01:01:00Z"));
      assertThat(reading.layout().timeRule()).contains("+01:00");
    }
  }

  @Nested
  class X14_a_clock_set_during_the_run {
    @Test
    void keeps_file_order_and_durations_and_says_so() {
      Reading reading = read("x14.txt");
      assertThat(times(reading).get(2)).isEqualTo(Instant.parse("2026-10-12T14:22:00Z"));
      assertThat(reading.log().orElseThrow().markers())
          .anyMatch(
              marker ->
                  marker.kind() == Marker.Kind.CLOCK_CHANGE
                      && marker.text().contains("7 min 30 s")
                      && marker.line() == 4);
    }
  }

  @Nested
  class X16_a_restart_with_its_header {
    @Test
    void is_one_log_with_a_gap_and_a_marker() {
      Reading reading = read("x16.txt");
      assertThat(reading.rows().kept()).isEqualTo(3);
      assertThat(reading.rows().setAside()).isEqualTo(1);
      assertThat(reading.log().orElseThrow().time().elapsed_s(1)).isEqualTo(48 * 60.0);
      assertThat(reading.log().orElseThrow().markers())
          .anyMatch(marker -> marker.kind() == Marker.Kind.RESTART && marker.line() == 3);
    }
  }

  @Nested
  class X18_thermocouples_by_number {
    @Test
    void takes_what_no_thermometer_can_show_as_a_dead_sensor() {
      Reading reading = read("x18.txt");
      assertThat(channel(reading, "T02").series().quality(2)).isEqualTo(Quality.OPEN_SENSOR);
      has(reading, "T01", Role.PRODUCT, celsius(-32.1));
      has(reading, "T04 CONDENSER", Role.COLLECTOR, celsius(-54.1));
      has(reading, "T05 SHELF IN", Role.SHELF, celsius(-20.1));
      assertThat(times(reading).get(0)).isEqualTo(Instant.parse("2026-10-13T09:00:00Z"));
    }
  }

  @Nested
  class X19_events_among_the_rows {
    @Test
    void become_markers_with_their_lines() {
      Reading reading = read("x19.txt");
      assertThat(reading.rows().kept()).isEqualTo(2);
      assertThat(reading.log().orElseThrow().markers())
          .extracting(Marker::kind, Marker::line)
          .containsExactlyInAnyOrder(
              org.assertj.core.groups.Tuple.tuple(Marker.Kind.STEP, 1L),
              org.assertj.core.groups.Tuple.tuple(Marker.Kind.ALARM, 3L),
              org.assertj.core.groups.Tuple.tuple(Marker.Kind.EVENT, 5L));
    }
  }

  @Nested
  class X20_one_value_a_line {
    @Test
    void is_turned_into_channels_and_its_bad_values_are_bad() {
      Reading reading = read("x20.txt");
      assertThat(reading.layout().form()).isEqualTo("long");
      has(reading, "HF1.P_CM", Role.PRESSURE_CAPACITANCE, 8.1);
      has(reading, "HF1.T_SH", Role.SHELF, celsius(-40));
      assertThat(channel(reading, "HF1.P_CM").series().quality(1)).isEqualTo(Quality.BAD);
    }
  }

  @Nested
  class X22_JSON_lines {
    @Test
    void are_flattened_and_null_is_missing() {
      Reading reading = read("x22.txt");
      assertThat(times(reading).get(0)).isEqualTo(Instant.parse("2026-10-12T08:00:00Z"));
      has(reading, "shelf", Role.SHELF, celsius(-40));
      has(reading, "p", Role.PRESSURE, 8.1);
      assertThat(channel(reading, "p").series().quality(1)).isEqualTo(Quality.MISSING);
      assertThat(channel(reading, "state").labels()).containsExactly("PRIM");
    }
  }

  @Nested
  class X23_scaled_whole_numbers_and_a_status_word {
    @Test
    void are_scaled_and_the_status_is_no_quantity() {
      Reading reading = read("x23.txt");
      assertThat(channel(reading, "PV1").series().value(0))
          .isCloseTo(celsius(-40), within(ROUNDING));
      has(reading, "PRESS", Role.PRESSURE, 8.1);
      has(reading, "STATUS", Role.STATUS, 0x13);
    }
  }

  @Nested
  class X25_inches_of_vacuum {
    @Test
    void count_down_from_an_assumed_atmosphere() {
      Reading reading = read("x25.txt");
      double left = 0.02 * Unit.parse("inHg").factor();
      assertThat(channel(reading, "Vacuum").series().value(2)).isCloseTo(left, within(10.0));
      assertThat(reading.guesses()).anyMatch(guess -> guess.reason().contains("too coarse"));
    }
  }

  @Nested
  class X29_dates_that_stay_ambiguous {
    @Test
    void are_asked_about() {
      assertThat(questions(read("x29.txt"))).contains(Question.Kind.DATE_ORDER);
    }

    @Test
    void are_settled_by_midnight() {
      Reading reading = read("x29-settled.txt");
      assertThat(questions(reading)).doesNotContain(Question.Kind.DATE_ORDER);
      assertThat(times(reading).get(2).toString()).startsWith("2026-03-05T00:00");
    }
  }

  @Nested
  class X30_statistics_at_the_end {
    @Test
    void are_set_aside() {
      Reading reading = read("x30.txt");
      assertThat(reading.rows().kept()).isEqualTo(2);
      assertThat(reading.rows().setAside()).isEqualTo(3);
    }
  }
}
