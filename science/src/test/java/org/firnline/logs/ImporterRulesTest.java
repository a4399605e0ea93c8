package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.firnline.logs.table.RowNote;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Rules every reading keeps, each with the smallest file that shows it. */
class ImporterRulesTest {
  private static final String HEAD = "time_utc,shelf_C,product_C,p_mbar,collector_C\n";

  private static Reading read(String text) {
    return new LogReader().read("rules.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static String row(int minute, String rest) {
    return String.format("2026-10-12T08:%02d:00Z,%s%n", minute, rest).replace("\r", "");
  }

  private static String rows(int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < to; i++) {
      text.append(row(i, "-40.0,-39.6,0.081,-54.2"));
    }
    return text.toString();
  }

  @Nested
  class R_IMP_01_no_row_is_dropped_silently {
    @Test
    void every_line_is_counted_and_every_unusable_one_named() {
      Reading reading =
          read(
              HEAD
                  + rows(0, 5)
                  + "2026-10-12T08:05\n"
                  + "garbage\n"
                  + row(7, "-40.0,abc,0.081,-54.2")
                  + rows(8, 12));
      assertThat(reading.rows().read()).isEqualTo(12);
      assertThat(reading.rows().kept()).isEqualTo(10);
      assertThat(reading.rows().rejected()).isEqualTo(2);
      assertThat(reading.rows().flagged()).isEqualTo(1);
      assertThat(reading.rowNotes())
          .filteredOn(note -> note.fate() == RowNote.Fate.REJECTED)
          .allMatch(note -> note.firstLine() == 7 || note.firstLine() == 8)
          .allMatch(note -> !note.reason().isBlank());
    }

    @Test
    void two_lines_run_together_are_rejected_and_named() {
      Reading reading =
          read(
              HEAD
                  + rows(0, 5)
                  + "2026-10-12T08:05:00Z,-40.0,-39.6,0.082026-10-12T08:06:00Z,-40.0,-39.6,0.08,-54.2\n"
                  + rows(7, 9));
      assertThat(reading.rows().rejected()).isEqualTo(1);
      assertThat(reading.rows().kept()).isEqualTo(7);
    }

    @Test
    void an_empty_file_is_a_problem_not_an_exception() {
      Reading reading = read("");
      assertThat(reading.log()).isEmpty();
      assertThat(reading.problems())
          .singleElement()
          .satisfies(p -> assertThat(p.advice()).isNotBlank());
    }
  }

  @Nested
  class R_IMP_02_the_character_set {
    private final String text =
        "time UTC;Stellfläche [°C]\n2026-10-12 08:00;-40,0\n2026-10-12 08:01;-40,1\n";

    @Test
    void is_told_by_its_mark_then_by_validity_then_by_the_signs_logs_hold() {
      for (String name : List.of("UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "IBM437")) {
        byte[] bytes = text.getBytes(java.nio.charset.Charset.forName(name));
        Reading reading = new LogReader().read("signs", bytes);
        assertThat(reading.layout().encoding()).isEqualTo(name);
        assertThat(reading.log().orElseThrow().channels().get(0).name()).isEqualTo("Stellfläche");
      }
    }

    @Test
    void can_be_chosen_otherwise_and_the_same_bytes_are_read_again() {
      byte[] bytes = text.getBytes(java.nio.charset.Charset.forName("windows-1252"));
      ReadingChoices choices =
          ReadingChoices.none().withEncoding(java.nio.charset.Charset.forName("IBM437"));
      Reading reading = new LogReader().read("signs", bytes, choices);
      assertThat(reading.layout().encoding()).isEqualTo("IBM437");
      assertThat(reading.log().orElseThrow().channels().get(0).name()).isNotEqualTo("Stellfläche");
    }

    @Test
    void of_a_marked_file_skips_the_mark_even_if_chosen() {
      byte[] bytes = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
      ReadingChoices choices = ReadingChoices.none().withEncoding(StandardCharsets.UTF_8);
      Reading reading = new LogReader().read("signs", bytes, choices);
      assertThat(reading.layout().header().get(0)).isEqualTo("time UTC");
    }
  }

  @Nested
  class R_IMP_03_delimiter_and_decimal_mark {
    @Test
    void are_decided_together() {
      Reading reading =
          read(
              "time UTC,shelf C,p mbar\n"
                  + "\"2026-10-12 08:00\",\"-40,0\",\"0,081\"\n".repeat(60));
      assertThat(reading.layout().delimiter()).isEqualTo(",");
      assertThat(reading.layout().decimalMark()).isEqualTo(",");
      assertThat(reading.log().orElseThrow().channels().get(1).series().asWritten(0))
          .isEqualTo(0.081);
    }

    @Test
    void do_not_take_a_decimal_comma_with_a_unit_for_thousands() {
      Reading reading =
          read("time UTC;p\n2026-10-12 08:00;68,798 mTorr\n2026-10-12 08:01;68,511 mTorr\n");
      assertThat(reading.log().orElseThrow().channels().get(0).series().asWritten(0))
          .isEqualTo(68.798);
    }

    @Test
    void can_be_chosen_otherwise() {
      Reading reading =
          new LogReader()
              .read(
                  "told",
                  "time UTC;p Pa\n2026-10-12 08:00;1,234\n2026-10-12 08:01;1,235\n"
                      .getBytes(StandardCharsets.UTF_8),
                  ReadingChoices.none().withDelimiter(';').withDecimalMark('.'));
      assertThat(reading.log().orElseThrow().channels().get(0).series().asWritten(0))
          .isEqualTo(1234);
    }
  }

  @Nested
  class R_IMP_05_the_order_of_dates {
    private Reading dates(String first, String second, ReadingChoices choices) {
      String text = "time,shelf_C\n" + first + ",-40\n" + second + ",-40\n";
      return new LogReader().read("dates", text.getBytes(StandardCharsets.UTF_8), choices);
    }

    @Test
    void is_asked_only_if_both_orders_stay_possible() {
      ReadingChoices utc = ReadingChoices.none().withZone(ZoneId.of("UTC"));
      assertThat(dates("03/04/2026 08:00", "03/04/2026 08:01", utc).questions())
          .extracting(Question::kind)
          .containsExactly(Question.Kind.DATE_ORDER);
      assertThat(dates("13/04/2026 08:00", "13/04/2026 08:01", utc).questions()).isEmpty();
      assertThat(dates("03/04/2026 23:59", "03/05/2026 00:00", utc).questions()).isEmpty();
    }

    @Test
    void is_remembered_by_the_choice_of_its_source() {
      ReadingChoices told =
          ReadingChoices.none().withZone(ZoneId.of("UTC")).withDateOrder(DateOrder.DAY_MONTH_YEAR);
      Reading reading = dates("03/04/2026 08:00", "03/04/2026 08:01", told);
      assertThat(reading.questions()).isEmpty();
      assertThat(reading.log().orElseThrow().start())
          .contains(Instant.parse("2026-04-03T08:00:00Z"));
    }
  }

  @Nested
  class R_IMP_06_a_file_without_a_zone {
    @Test
    void takes_the_zone_of_its_source_and_says_by_which_rule() {
      Reading reading =
          new LogReader()
              .read(
                  "zone",
                  "time,shelf_C\n2026-07-12 10:00,-40\n2026-07-12 10:01,-40\n"
                      .getBytes(StandardCharsets.UTF_8),
                  ReadingChoices.none().withZone(ZoneId.of("Europe/Berlin")));
      Log log = reading.log().orElseThrow();
      assertThat(log.start()).contains(Instant.parse("2026-07-12T08:00:00Z"));
      assertThat(log.basis().zone()).isEqualTo(ZoneId.of("Europe/Berlin"));
      assertThat(log.basis().rule()).contains("Europe/Berlin with its summer time");
    }
  }

  @Nested
  class R_IMP_08_a_clock_that_was_set {
    @Test
    void keeps_the_order_of_the_file_and_marks_the_step() {
      Reading reading =
          read(
              "time_utc,shelf_C\n2026-10-12T08:00:00Z,1\n2026-10-12T08:01:00Z,2\n"
                  + "2026-10-12T07:31:00Z,3\n2026-10-12T07:32:00Z,4\n");
      Log log = reading.log().orElseThrow();
      assertThat(log.time().duration_s()).isEqualTo(180);
      assertThat(log.channels().get(0).series().asWritten(2)).isEqualTo(3);
      assertThat(log.markers())
          .anyMatch(m -> m.kind() == Marker.Kind.CLOCK_CHANGE && m.text().contains("31 min"));
    }
  }

  @Nested
  class R_IMP_10_a_gap {
    @Test
    void stays_a_gap_and_is_not_filled() {
      Log log = read(HEAD + rows(0, 5) + rows(45, 50)).log().orElseThrow();
      assertThat(log.time().size()).isEqualTo(10);
      assertThat(log.time().elapsed_s(5) - log.time().elapsed_s(4)).isEqualTo(41 * 60.0);
    }
  }

  @Nested
  class R_IMP_11_words_in_a_numbers_place {
    @Test
    void become_states_and_never_zero() {
      String[] words = {
        "High", "OVER", "Low", "UNDER", "OFF", "OL", "---", "NaN", "Err 4", "<0.01"
      };
      Quality[] states = {
        Quality.OVER_RANGE,
        Quality.OVER_RANGE,
        Quality.UNDER_RANGE,
        Quality.UNDER_RANGE,
        Quality.OFF,
        Quality.OPEN_SENSOR,
        Quality.MISSING,
        Quality.MISSING,
        Quality.BAD,
        Quality.UNDER_RANGE
      };
      StringBuilder text = new StringBuilder(HEAD + rows(0, 20));
      for (int i = 0; i < words.length; i++) {
        text.append(row(20 + i, "-40.0,-39.6," + words[i] + ",-54.2"));
      }
      Log log = read(text.toString()).log().orElseThrow();
      for (int i = 0; i < words.length; i++) {
        assertThat(log.channels().get(2).series().quality(20 + i))
            .as(words[i])
            .isEqualTo(states[i]);
        assertThat(log.channels().get(2).series().value(20 + i)).isNaN();
      }
    }
  }

  @Nested
  class R_IMP_13_units {
    private double pressure(String heading, String cell) {
      String text = "time_utc," + heading + "\n" + row(0, cell) + row(1, cell) + row(2, cell);
      return read(text).log().orElseThrow().channels().get(0).series().value(0);
    }

    /** Conversions: 1 Torr = 101 325/760 Pa and 1 inHg = 3 386.389 Pa (NIST SP 811, App. B.8). */
    @Test
    void come_from_heading_cell_or_scale() {
      assertThat(pressure("p [mbar]", "0.08")).isCloseTo(8, within(1e-9));
      assertThat(pressure("p micron", "60")).isCloseTo(60 * 101_325 / 760e3, within(1e-9));
      assertThat(pressure("p", "60 mTorr")).isCloseTo(60 * 101_325 / 760e3, within(1e-9));
      assertThat(pressure("p x10-3 mbar", "80")).isCloseTo(8, within(1e-9));
      assertThat(pressure("p µbar", "80")).isCloseTo(8, within(1e-9));
      assertThat(pressure("Vacuum inHg", "29.9")).isCloseTo(101_325 - 29.9 * 3386.389, within(1.0));
    }

    @Test
    void that_only_plausibility_tells_are_asked() {
      Reading reading = read("time_utc,shelf_C,p\n" + row(0, "-40,0.08") + row(1, "-40,0.081"));
      assertThat(reading.questions())
          .extracting(Question::kind)
          .containsExactly(Question.Kind.UNIT_OR_ROLE);
    }
  }

  @Nested
  class R_IMP_16_events_and_steps {
    @Test
    void become_markers_with_their_line() {
      Reading reading =
          read(
              "time_utc;kind;shelf C;p Pa\n2026-10-12T08:00:00Z;DATA;-40.0;8.1\n"
                  + "2026-10-12T08:00:30Z;ALARM;VAC HI;\n2026-10-12T08:01:00Z;DATA;-40.0;8.1\n"
                  + "# door opened by JB\n2026-10-12T08:02:00Z;DATA;-40.0;8.1\n");
      assertThat(reading.log().orElseThrow().markers())
          .anyMatch(m -> m.kind() == Marker.Kind.ALARM && m.line() == 3)
          .anyMatch(m -> m.line() == 5 && m.text().contains("door opened"));
    }
  }

  @Nested
  class R_IMP_04_headers {
    @Test
    void a_preamble_right_above_the_header_stays_out_of_it() {
      Reading reading = read("Run,HF-0231\nOperator,R. Marsh\nBatch,17\n" + HEAD + rows(0, 6));
      assertThat(reading.layout().headerLines()).containsExactly(4L);
      assertThat(reading.log().orElseThrow().preamble())
          .contains(new PreambleEntry(2, "Operator", "R. Marsh"));
    }

    @Test
    void lettered_products_are_names_not_degrees() {
      Reading reading =
          read(
              "time_utc,shelf degC,Product A,Product B,Product C\n"
                  + "2026-10-12T08:00:00Z,-40.0,-39.0,-38.0,-37.0\n"
                  + "2026-10-12T08:01:00Z,-40.0,-39.0,-38.0,-37.0\n");
      assertThat(reading.log().orElseThrow().channels())
          .extracting(channel -> channel.name())
          .containsExactly("shelf", "Product A", "Product B", "Product C");
    }
  }

  @Nested
  class R_IMP_07_and_06_zones {
    @Test
    void the_spring_hour_that_a_logger_writes_shows_that_it_knows_no_summer_time() {
      StringBuilder text = new StringBuilder("time,shelf_C,p_mbar\n");
      for (int i = 0; i < 180; i++) {
        int minute = i % 60;
        text.append(String.format("2026-03-29 %02d:%02d,-40.0,0.08\n", 1 + i / 60, minute));
      }
      Reading reading =
          new LogReader()
              .read(
                  "spring.csv",
                  text.toString().getBytes(StandardCharsets.UTF_8),
                  ReadingChoices.none().withZone(ZoneId.of("Europe/Berlin")));
      Log log = reading.log().orElseThrow();
      assertThat(log.time().instant(0)).isEqualTo(Instant.parse("2026-03-29T00:00:00Z"));
      assertThat(log.time().duration_s()).isEqualTo(179 * 60.0);
    }

    @Test
    void a_missing_zone_is_asked_for() {
      Reading reading =
          read("time,shelf_C,p_mbar\n2026-10-12 08:00,-40,0.08\n2026-10-12 08:01,-40,0.08\n");
      assertThat(reading.questions())
          .extracting(Question::kind)
          .containsExactly(Question.Kind.ZONE);
    }
  }

  @Nested
  class R_IMP_09_equal_stamps {
    @Test
    void of_a_clock_without_seconds_are_spread_over_their_minute() {
      StringBuilder text = new StringBuilder("time UTC,shelf_C,p_mbar\n");
      for (int i = 0; i < 12; i++) {
        text.append("2026-10-12 08:0").append(i / 6).append(",-40.0,0.08\n");
      }
      Log log = read(text.toString()).log().orElseThrow();
      for (int i = 0; i < 12; i++) {
        assertThat(log.time().elapsed_s(i)).isEqualTo(10.0 * i);
      }
    }
  }

  @Nested
  class R_IMP_12_numbers_that_stand_for_no_sensor {
    @Test
    void are_flagged_when_they_stand_apart_and_keep_their_figure() {
      Reading reading =
          read(
              HEAD
                  + rows(0, 5)
                  + row(5, "-40.0,850,0.081,-54.2")
                  + row(6, "-40.0,850,0.081,-54.2")
                  + rows(7, 10));
      Log log = reading.log().orElseThrow();
      assertThat(log.findChannelIn(Role.PRODUCT).orElseThrow().series().quality(5))
          .isEqualTo(Quality.OPEN_SENSOR);
      assertThat(log.findChannelIn(Role.PRODUCT).orElseThrow().series().asWritten(5))
          .isEqualTo(850);
    }

    @Test
    void are_left_alone_where_they_are_a_usual_value() {
      StringBuilder text = new StringBuilder("time_utc,shelf_C,p_mTorr\n");
      for (int i = 0; i < 30; i++) {
        text.append(row(i, "-40.0," + (9990 + i % 12)));
      }
      assertThat(read(text.toString()).rows().flagged()).isZero();
    }
  }

  @Nested
  class R_IMP_14_what_cannot_be_together {
    @Test
    void a_collector_warmer_than_the_shelf_is_reported() {
      Reading reading =
          read(
              "time_utc,collector_C,shelf_C,p_mbar\n"
                  + rows(0, 8).replaceAll(",-39.6,0.081,-54.2", ",-60.0,0.081"));
      assertThat(reading.problems())
          .anyMatch(problem -> problem.what().contains("warmer than the shelf"));
    }

    @Test
    void a_pressure_above_the_atmosphere_is_reported() {
      Reading reading =
          read(
              "time_utc,shelf_C,p_mbar\n"
                  + row(0, "-40.0,99000")
                  + row(1, "-40.0,99000")
                  + row(2, "-40.0,99000"));
      assertThat(reading.problems())
          .anyMatch(problem -> problem.what().contains("above any atmosphere"));
    }
  }

  @Nested
  class R_IMP_15_a_set_point_without_a_name {
    @Test
    void is_told_by_holding_and_ramping_exactly() {
      StringBuilder text = new StringBuilder("time_utc,Vacuum mbar,Vacuum mbar\n");
      for (int i = 0; i < 59; i++) {
        double noise = 0.001 * Math.sin(i * 12.9898) + 0.0013 * Math.cos(i * 78.233);
        text.append(row(i, (i < 30 ? "0.1," : "0.08,") + String.format("%.4f", 0.09 + noise)));
      }
      Log log = read(text.toString()).log().orElseThrow();
      assertThat(log.channels().get(0).role()).isEqualTo(Role.PRESSURE_SET_POINT);
      assertThat(log.channels().get(1).role()).isEqualTo(Role.PRESSURE);
    }
  }

  @Nested
  class R_IMP_17_a_growing_file {
    @Test
    void leaves_an_unfinished_last_line_for_later() {
      Reading reading = read(HEAD + rows(0, 5) + "2026-10-12T08:05:00Z,-40.0,-3");
      assertThat(reading.rows().kept()).isEqualTo(5);
      assertThat(reading.rows().rejected()).isZero();
      assertThat(reading.problems())
          .singleElement()
          .satisfies(problem -> assertThat(problem.where()).contains("line 7"));
    }

    @Test
    void gives_the_same_rows_again_when_it_has_grown() {
      Log before = read(HEAD + rows(0, 5) + "2026-10-12T08:05:00Z,-40.0,-3").log().orElseThrow();
      Log after = read(HEAD + rows(0, 20)).log().orElseThrow();
      LogJoin.Joined joined = new LogJoin().join(List.of(before, after));
      assertThat(joined.repeated()).isEqualTo(5);
      assertThat(joined.log().time().size()).isEqualTo(20);
      for (int row = 0; row < before.time().size(); row++) {
        assertThat(after.time().instant(row)).isEqualTo(before.time().instant(row));
        assertThat(after.channels().get(1).series().value(row))
            .isEqualTo(before.channels().get(1).series().value(row));
      }
    }

    @Test
    void reads_the_same_again() {
      String text = HEAD + rows(0, 20);
      assertThat(read(text).rows()).isEqualTo(read(text).rows());
      assertThat(read(text).guesses()).isEqualTo(read(text).guesses());
    }
  }

  @Nested
  class R_IMP_19_a_profile_is_a_hint {
    private final ReadingProfile profile =
        new ReadingProfile(
            List.of("time_utc", "shelf_C", "product_C", "p_mbar", "collector_C"),
            ReadingChoices.none()
                .withColumns(
                    Map.of(
                        "product_C",
                        new ColumnChoice(Optional.of(Role.PRODUCT_SURFACE), Optional.empty()))));

    private Reading read(String text) {
      return new LogReader().read("next.csv", text.getBytes(StandardCharsets.UTF_8), profile);
    }

    @Test
    void that_is_followed_while_the_header_stays() {
      Reading reading = read(HEAD + rows(0, 5));
      assertThat(reading.problems()).isEmpty();
      assertThat(reading.log().orElseThrow().channels().get(1).role())
          .isEqualTo(Role.PRODUCT_SURFACE);
    }

    @Test
    void that_is_dropped_with_a_word_when_the_header_changes() {
      Reading reading = read(HEAD.replace("p_mbar", "pressure_mbar") + rows(0, 5));
      assertThat(reading.log().orElseThrow().channels().get(1).role()).isEqualTo(Role.PRODUCT);
      assertThat(reading.problems())
          .anyMatch(problem -> problem.what().contains("\"pressure_mbar\" is new"));
    }
  }

  @Nested
  class R_IMP_22_everything_guessed_is_listed {
    @Test
    void with_its_reason_and_the_choice_that_changes_it() {
      Reading reading =
          read("Zeit;Platte;Druck\n12.10.2026 08:00;-40,0;0,08\n13.10.2026 08:00;-40,0;0,08\n");
      assertThat(reading.guesses())
          .extracting(Guess::what)
          .contains(
              "encoding", "delimiter", "decimal mark", "date order", "zone", "unit of Platte");
      assertThat(reading.guesses())
          .allSatisfy(guess -> assertThat(guess.reason()).isNotBlank())
          .allSatisfy(guess -> assertThat(guess.choice()).isNotBlank());
    }

    @Test
    void and_a_choice_is_followed() {
      String text = "time_utc,a,b\n" + row(0, "-10,1") + row(1, "-10,1");
      Reading reading =
          new LogReader()
              .read(
                  "told.csv",
                  text.getBytes(StandardCharsets.UTF_8),
                  ReadingChoices.none()
                      .withColumns(
                          Map.of(
                              "a",
                              new ColumnChoice(Optional.of(Role.SHELF), Optional.of("°F")),
                              "#3",
                              new ColumnChoice(Optional.of(Role.PRESSURE), Optional.of("mTorr")))));
      Log log = reading.log().orElseThrow();
      assertThat(log.channels().get(0).role()).isEqualTo(Role.SHELF);
      assertThat(log.channels().get(0).unit()).isEqualTo("°F");
      assertThat(log.channels().get(1).series().value(0)).isBetween(0.133, 0.134);
      assertThat(Arrays.asList(Question.Kind.values())).hasSize(3);
    }
  }
}
