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
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Layouts as loggers write them, each a few rows of invented data. The numbers in the names are
 * those of the list of synthetic examples that the reader is built against.
 */
class LayoutsTest {

  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  private static final ZoneId LONDON = ZoneId.of("Europe/London");
  private static final double DIGITS_K = 0.051;

  private static Reading read(String name, ReadingChoices choices) {
    return new LogReader().read(name, SharedLogs.bytes("layouts/" + name), choices);
  }

  private static Reading read(String name) {
    return read(name, ReadingChoices.none());
  }

  private static List<Instant> times(Reading reading) {
    Log log = reading.log().orElseThrow();
    return IntStream.range(0, log.time().size()).mapToObj(log.time()::instant).toList();
  }

  private static List<Instant> utc(String... texts) {
    return List.of(texts).stream().map(Instant::parse).toList();
  }

  private static Channel channel(Reading reading, String name) {
    return reading.log().orElseThrow().channels().stream()
        .filter(channel -> channel.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<Role> roles(Reading reading) {
    return reading.log().orElseThrow().channels().stream().map(Channel::role).toList();
  }

  private static List<Question.Kind> questions(Reading reading) {
    return reading.questions().stream().map(Question::kind).distinct().toList();
  }

  private static void celsius(Reading reading, String name, double... values) {
    for (int i = 0; i < values.length; i++) {
      assertThat(channel(reading, name).series().value(i))
          .as("%s, row %d", name, i + 1)
          .isCloseTo(values[i] + 273.15, within(DIGITS_K));
    }
  }

  private static void pascals(Reading reading, String name, double... values) {
    for (int i = 0; i < values.length; i++) {
      assertThat(channel(reading, name).series().value(i))
          .as("%s, row %d", name, i + 1)
          .isCloseTo(values[i], within(0.006 * values[i]));
    }
  }

  @Nested
  class Dates {

    @Test
    void x01_plain_utc_raises_no_question() {
      Reading reading = read("x01.txt");
      assertThat(reading.questions()).isEmpty();
      assertThat(times(reading)).isEqualTo(utc("2026-10-12T08:00:00Z", "2026-10-12T08:01:00Z"));
      assertThat(roles(reading))
          .containsExactly(Role.SHELF, Role.PRODUCT, Role.PRESSURE, Role.COLLECTOR);
      celsius(reading, "shelf_C", -40, -40);
      pascals(reading, "pressure_mbar", 8.1, 8.0);
    }

    @Test
    void x02_dotted_dates_in_the_zone_of_the_source() {
      Reading reading = read("x02.txt", ReadingChoices.none().withZone(BERLIN));
      assertThat(reading.questions()).isEmpty();
      assertThat(times(reading)).isEqualTo(utc("2026-10-12T08:00:00Z", "2026-10-12T08:01:00Z"));
      assertThat(roles(reading))
          .containsExactly(Role.SHELF, Role.PRODUCT, Role.PRESSURE, Role.COLLECTOR);
      celsius(reading, "Produkt 1", -39.6);
    }

    @Test
    void x03_a_tied_date_order_is_asked_and_a_choice_settles_it() {
      assertThat(questions(read("x03.txt")))
          .containsExactlyInAnyOrder(Question.Kind.DATE_ORDER, Question.Kind.ZONE);
      Reading reading =
          read(
              "x03.txt",
              ReadingChoices.none()
                  .withZone(ZoneId.of("UTC"))
                  .withDateOrder(DateOrder.MONTH_DAY_YEAR));
      assertThat(times(reading)).isEqualTo(utc("2026-10-12T12:59:30Z", "2026-10-12T13:00:00Z"));
      celsius(reading, "Shelf", -23.33);
      pascals(reading, "Vac", 54.93, 54.0);
    }

    @Test
    void x04_seconds_since_a_start_in_the_preamble() {
      Reading reading = read("x04.txt");
      assertThat(times(reading)).isEqualTo(utc("2026-10-12T08:00:00Z", "2026-10-12T08:00:30Z"));
      pascals(reading, "Chamber P", 8.1, 8.0);
    }

    @Test
    void x08_hours_beyond_a_day_and_no_start() {
      Reading reading = read("x08.txt");
      Log log = reading.log().orElseThrow();
      assertThat(log.basis().startKnown()).isFalse();
      assertThat(log.time().elapsed_s(2) + 23 * 3600 + 59 * 60).isEqualTo(91_815);
      pascals(reading, "P", 10.0);
    }

    @Test
    void x09_spreadsheet_days_without_a_header_ask_for_their_roles() {
      Reading reading = read("x09.txt");
      assertThat(times(reading)).isEqualTo(utc("2026-10-12T08:00:00Z", "2026-10-12T08:01:00Z"));
      assertThat(questions(reading)).contains(Question.Kind.UNIT_OR_ROLE);
      assertThat(roles(reading))
          .containsExactly(Role.SHELF, Role.PRODUCT, Role.PRESSURE, Role.COLLECTOR);
    }

    @Test
    void x11_the_hour_that_comes_twice() {
      Reading reading = read("x11.txt", ReadingChoices.none().withZone(LONDON));
      assertThat(times(reading))
          .isEqualTo(
              utc(
                  "2026-10-25T00:58:00Z",
                  "2026-10-25T00:59:00Z",
                  "2026-10-25T01:00:00Z",
                  "2026-10-25T01:01:00Z"));
    }

    @Test
    void x14_a_clock_set_back_during_the_run_keeps_the_rows_in_order() {
      Reading reading = read("x14.txt");
      assertThat(times(reading)).isSorted();
      assertThat(reading.log().orElseThrow().markers())
          .anySatisfy(
              marker -> {
                assertThat(marker.kind()).isEqualTo(Marker.Kind.CLOCK_CHANGE);
                assertThat(marker.text()).contains("7 min 30 s");
              });
    }

    @Test
    void x29_midnight_settles_what_a_short_run_leaves_open() {
      assertThat(questions(read("x29.txt"))).contains(Question.Kind.DATE_ORDER);
      Reading settled = read("x29-settled.txt");
      assertThat(questions(settled)).doesNotContain(Question.Kind.DATE_ORDER);
      assertThat(times(settled)).contains(Instant.parse("2026-03-05T00:00:00Z"));
    }
  }

  @Nested
  class Tables {

    @Test
    void x05_three_header_rows_with_blanks_are_joined() {
      Reading reading = read("x05.txt");
      assertThat(reading.log().orElseThrow().channels())
          .extracting(Channel::name)
          .containsExactly(
              "Shelf In",
              "Shelf Out",
              "Product TC1",
              "Product TC2",
              "Pressure CM",
              "Pressure Pirani");
      pascals(reading, "Pressure CM", 8.0);
      pascals(reading, "Pressure Pirani", 12.8, 12.7);
    }

    @Test
    void x06_two_byte_characters_and_milliseconds_behind_a_comma() {
      Reading reading = read("x06.txt");
      assertThat(times(reading)).isEqualTo(utc("2026-10-12T10:00:00Z", "2026-10-12T10:00:05Z"));
      pascals(reading, "p_Kammer", 8.10, 8.08);
      assertThat(questions(reading)).contains(Question.Kind.UNIT_OR_ROLE);
    }

    @Test
    void x16_a_header_in_the_middle_is_a_restart_and_no_data() {
      Reading reading = read("x16.txt");
      assertThat(reading.rows().kept()).isEqualTo(3);
      assertThat(reading.rows().setAside()).isEqualTo(1);
      assertThat(times(reading))
          .isEqualTo(utc("2026-10-13T02:14:00Z", "2026-10-13T03:02:00Z", "2026-10-13T03:03:00Z"));
      assertThat(reading.log().orElseThrow().markers())
          .extracting(Marker::kind)
          .contains(Marker.Kind.RESTART);
    }

    @Test
    void x19_events_among_the_rows_become_markers() {
      Reading reading = read("x19.txt");
      assertThat(reading.rows().kept()).isEqualTo(2);
      assertThat(reading.log().orElseThrow().markers())
          .extracting(Marker::kind)
          .containsExactly(Marker.Kind.STEP, Marker.Kind.ALARM, Marker.Kind.EVENT);
    }

    @Test
    void x30_statistics_at_the_end_are_no_data() {
      Reading reading = read("x30.txt");
      assertThat(reading.rows().kept()).isEqualTo(2);
      assertThat(reading.rows().setAside()).isEqualTo(3);
    }
  }

  @Nested
  class Values {

    @Test
    void x10_words_and_numbers_that_mean_no_value() {
      Reading reading = read("x10.txt");
      assertThat(qualities(reading, "p_mTorr"))
          .startsWith(Quality.OVER_RANGE, Quality.OVER_RANGE, Quality.UNDER_RANGE, Quality.GOOD);
      assertThat(qualities(reading, "trap_C").get(0)).isEqualTo(Quality.OFF);
      assertThat(qualities(reading, "tc1_C").subList(2, 4)).containsOnly(Quality.OPEN_SENSOR);
      assertThat(channel(reading, "tc2_C").series().goodCount()).isZero();
      for (Channel channel : reading.log().orElseThrow().channels()) {
        for (int i = 0; i < channel.series().size(); i++) {
          assertThat(channel.series().value(i)).isNotZero();
        }
      }
    }

    @Test
    void x18_a_thermocouple_that_breaks_is_left_out() {
      Reading reading = read("x18.txt");
      assertThat(qualities(reading, "T02").get(2)).isEqualTo(Quality.OPEN_SENSOR);
      assertThat(channel(reading, "T04 CONDENSER").role()).isEqualTo(Role.COLLECTOR);
      assertThat(channel(reading, "T05 SHELF IN").role()).isEqualTo(Role.SHELF);
    }

    @Test
    void x23_whole_numbers_scaled_in_the_heading() {
      Reading reading = read("x23.txt");
      celsius(reading, "PV1", -40);
      celsius(reading, "PV2", -39.6);
      pascals(reading, "PRESS", 8.1, 8.0);
      assertThat(channel(reading, "STATUS").role()).isEqualTo(Role.STATUS);
    }

    private static List<Quality> qualities(Reading reading, String name) {
      var series = channel(reading, name).series();
      return IntStream.range(0, series.size()).mapToObj(series::quality).toList();
    }
  }
}
