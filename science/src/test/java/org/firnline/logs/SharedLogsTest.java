package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Four whole logs of different layouts, against what their makers wrote down about them. */
class SharedLogsTest {
  /** Values are kept as printed; only the shift to kelvin rounds. */
  private static final double ROUNDING = 1e-9;

  private static Reading reading(String name) {
    return new LogReader().read(name, SharedLogs.bytes(name));
  }

  private static void hasChannel(Log log, int index, String name, Role role, String unit) {
    Channel channel = log.channels().get(index);
    assertThat(channel.name()).isEqualTo(name);
    assertThat(channel.role()).isEqualTo(role);
    assertThat(channel.unit()).isEqualTo(unit);
  }

  @Nested
  class A_plain_comma_file_in_UTC {
    private final Reading reading = reading("log01-plain.csv");
    private final Log log = reading.log().orElseThrow();

    @Test
    void is_kept_whole_without_a_question() {
      assertThat(reading.rows().kept()).isEqualTo(2741);
      assertThat(reading.rows().rejected()).isZero();
      assertThat(reading.rows().flagged()).isZero();
      assertThat(reading.questions()).isEmpty();
      assertThat(reading.problems()).isEmpty();
    }

    @Test
    void has_its_layout_recognized() {
      assertThat(reading.layout().delimiter()).isEqualTo(",");
      assertThat(reading.layout().decimalMark()).isEqualTo(".");
      assertThat(reading.layout().encoding()).isEqualTo("UTF-8");
      assertThat(reading.layout().headerLines()).containsExactly(1L);
    }

    @Test
    void has_its_roles_and_units_recognized() {
      assertThat(log.channels()).hasSize(8);
      hasChannel(log, 0, "shelf set", Role.SHELF_SET_POINT, "degC");
      hasChannel(log, 1, "shelf", Role.SHELF, "degC");
      hasChannel(log, 2, "chamber capacitance", Role.PRESSURE_CAPACITANCE, "Pa");
      hasChannel(log, 3, "chamber thermal", Role.PRESSURE_THERMAL, "Pa");
      hasChannel(log, 4, "collector", Role.COLLECTOR, "degC");
      hasChannel(log, 5, "product 1", Role.PRODUCT, "degC");
      hasChannel(log, 7, "product 3", Role.PRODUCT, "degC");
    }

    @Test
    void has_its_times_and_values_right() {
      assertThat(log.start()).contains(Instant.parse("2025-03-04T07:30:00Z"));
      assertThat(log.end()).contains(Instant.parse("2025-03-06T05:10:00Z"));
      assertThat(log.channels().get(5).series().value(0)).isCloseTo(295.25, within(ROUNDING));
      assertThat(log.channels().get(5).series().asWritten(1)).isEqualTo(21.99);
    }
  }

  @Nested
  class A_German_file_in_windows_1252 {
    private final Reading reading = reading("log02-decimal-comma.csv");
    private final Log log = reading.log().orElseThrow();

    @Test
    void is_kept_whole_without_a_question() {
      assertThat(reading.rows().kept()).isEqualTo(5229);
      assertThat(reading.rows().rejected()).isZero();
      assertThat(reading.questions()).isEmpty();
    }

    @Test
    void has_its_layout_recognized() {
      assertThat(reading.layout().delimiter()).isEqualTo(";");
      assertThat(reading.layout().decimalMark()).isEqualTo(",");
      assertThat(reading.layout().encoding()).isEqualTo("windows-1252");
      assertThat(reading.layout().headerLines()).containsExactly(13L);
    }

    @Test
    void takes_the_zone_from_the_preamble() {
      assertThat(log.start()).contains(Instant.parse("2025-02-11T05:02:17Z"));
      assertThat(log.basis().zone().getId()).isEqualTo("+01:00");
    }

    @Test
    void takes_gauge_kinds_and_units_from_the_channel_list_in_the_preamble() {
      hasChannel(log, 2, "p1", Role.PRESSURE_CAPACITANCE, "mbar");
      hasChannel(log, 3, "p2", Role.PRESSURE_THERMAL, "mbar");
      assertThat(log.channels().get(2).series().value(0)).isCloseTo(1333.0, within(ROUNDING));
    }

    @Test
    void has_its_German_names_understood() {
      hasChannel(log, 0, "Stellfläche Soll", Role.SHELF_SET_POINT, "°C");
      hasChannel(log, 1, "Stellfläche Ist", Role.SHELF, "°C");
      hasChannel(log, 4, "Eis", Role.COLLECTOR, "°C");
      hasChannel(log, 6, "Produkt B", Role.PRODUCT, "°C");
    }

    @Test
    void keeps_the_preamble_as_keys_and_values() {
      assertThat(log.preamble())
          .contains(
              new PreambleEntry(4, "Charge", "HF-0211"),
              new PreambleEntry(5, "Bemerkung", "2 Fühler; Rand ohne Abschirmung"));
    }
  }

  @Nested
  class A_quoted_file_with_missing_cells {
    private final Reading reading = reading("log05-quoted-missing.csv");
    private final Log log = reading.log().orElseThrow();

    @Test
    void keeps_every_row_and_flags_those_with_missing_cells() {
      long marked =
          new String(
                  SharedLogs.bytes("log05-quoted-missing.csv"),
                  java.nio.charset.StandardCharsets.UTF_8)
              .lines()
              .filter(line -> line.contains("\"---\""))
              .count();
      assertThat(reading.rows().kept()).isEqualTo(3128);
      assertThat(reading.rows().flagged()).isEqualTo(marked);
    }

    @Test
    void never_turns_a_missing_cell_into_a_number() {
      Channel thermal = log.findChannelIn(Role.PRESSURE_THERMAL).orElseThrow();
      assertThat(thermal.series().quality(0)).isEqualTo(Quality.MISSING);
      assertThat(thermal.series().value(0)).isNaN();
    }

    @Test
    void counts_minutes_from_an_assumed_start_and_says_so() {
      assertThat(log.basis().startKnown()).isFalse();
      assertThat(log.time().elapsed_s(3127)).isEqualTo(3127 * 60.0);
      assertThat(reading.guesses()).anyMatch(guess -> guess.choice().equals("start"));
    }

    @Test
    void takes_the_start_a_person_gives() {
      Instant start = Instant.parse("2025-01-08T06:00:00Z");
      Reading told =
          new LogReader()
              .read(
                  "log05-quoted-missing.csv",
                  SharedLogs.bytes("log05-quoted-missing.csv"),
                  ReadingChoices.none().withStart(start));
      assertThat(told.log().orElseThrow().start()).contains(start);
      assertThat(told.log().orElseThrow().basis().startKnown()).isTrue();
    }

    @Test
    void tells_the_capacitance_gauge_by_its_full_scale() {
      hasChannel(log, 2, "p", Role.PRESSURE_CAPACITANCE, "Pa");
      hasChannel(log, 3, "p_pirani", Role.PRESSURE_THERMAL, "Pa");
    }
  }

  @Nested
  class A_manifold_file_in_epoch_milliseconds {
    private final Reading reading = reading("log09-manifold-epoch.csv");
    private final Log log = reading.log().orElseThrow();

    @Test
    void is_kept_whole_without_a_question() {
      assertThat(reading.rows().kept()).isEqualTo(8640);
      assertThat(reading.questions()).isEmpty();
      assertThat(log.start()).contains(Instant.parse("2025-06-12T08:00:00Z"));
    }

    @Test
    void has_its_roles_recognized() {
      hasChannel(log, 0, "room_C", Role.ROOM, "C");
      hasChannel(log, 1, "vac_mbar", Role.PRESSURE_THERMAL, "mbar");
      hasChannel(log, 2, "coll_C", Role.COLLECTOR, "C");
      hasChannel(log, 3, "flask_surface_3_C", Role.PRODUCT_SURFACE, "C");
    }

    @Test
    void turns_the_state_column_into_a_marker() {
      assertThat(log.channels().get(4).labels()).containsExactly("PUMP");
      assertThat(log.markers())
          .anyMatch(marker -> marker.kind() == Marker.Kind.STATE && marker.text().equals("PUMP"));
    }
  }
}
