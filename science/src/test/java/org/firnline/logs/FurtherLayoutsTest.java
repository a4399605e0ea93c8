package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.firnline.logs.table.RowNote;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Structures of files beyond one table with one header: each with the smallest file that shows it.
 */
class FurtherLayoutsTest {
  private static Reading read(String text) {
    return new LogReader().read("further", text.getBytes(StandardCharsets.UTF_8));
  }

  private static Log log(Reading reading) {
    return reading.log().orElseThrow(() -> new AssertionError(reading.problems().toString()));
  }

  private static Channel in(Role role, Reading reading) {
    return log(reading).findChannelIn(role).orElseThrow();
  }

  @Nested
  class Fixed_width {
    private final Reading reading =
        read(
            "Harrow Fen run 12\n\n"
                + "Date       Time      Shelf in  Product 1  Chamber P   Ice\n"
                + "                        degC       degC       mbar  degC\n"
                + "2026-10-12 08:00:00    -40.0      -39.6      0.081 -54.2\n"
                + "2026-10-12 08:01:00    -40.0                 0.080 -54.2\n"
                + "2026-10-12 08:02:00    -39.8      -39.5      0.080 -54.1\n"
                + "-------------------------------------------------------\n"
                + "2026-10-12 08:03:00    -39.5      -39.4      0.079 -54.1\n");

    @Test
    void keeps_an_empty_cell_in_its_column() {
      assertThat(reading.layout().form()).isEqualTo("fixed width");
      assertThat(log(reading).time().size()).isEqualTo(4);
      assertThat(in(Role.PRODUCT, reading).series().quality(1)).isEqualTo(Quality.MISSING);
      assertThat(in(Role.PRESSURE, reading).series().asWritten(1)).isEqualTo(0.080);
      assertThat(in(Role.COLLECTOR, reading).series().asWritten(1)).isEqualTo(-54.2);
    }

    @Test
    void takes_names_and_units_from_above_the_columns() {
      assertThat(log(reading).channels())
          .extracting(Channel::name)
          .containsExactly("Shelf in", "Product 1", "Chamber P", "Ice");
      assertThat(in(Role.PRESSURE, reading).series().value(0)).isEqualTo(8.1);
    }
  }

  @Nested
  class JSON {
    @Test
    void in_nested_objects_over_several_lines_is_read() {
      Reading reading =
          read(
              "{\n"
                  + " \"dryer\": \"Fen 2\",\n"
                  + " \"samples\": [\n"
                  + "  {\"ts\": \"2026-10-12T08:00:00Z\",\n"
                  + "   \"shelf\": {\"in\": -40.0, \"out\": -39.8},\n"
                  + "   \"p\": {\"value\": 8.1, \"unit\": \"Pa\"}},\n"
                  + "  {\"ts\": \"2026-10-12T08:01:00Z\",\n"
                  + "   \"shelf\": {\"in\": -40.0, \"out\": -39.9},\n"
                  + "   \"p\": {\"value\": 8.0, \"unit\": \"Pa\"}}\n"
                  + " ]\n"
                  + "}\n");
      assertThat(log(reading).time().size()).isEqualTo(2);
      assertThat(log(reading).channelsIn(Role.SHELF)).hasSize(2);
      assertThat(in(Role.PRESSURE, reading).series().value(1)).isEqualTo(8.0);
    }

    @Test
    void of_a_broken_line_is_rejected_with_its_number() {
      Reading reading =
          read(
              "{\"ts\":1791792000000,\"shelf\":-40.0}\n{\"ts\":17917920\n"
                  + "{\"ts\":1791792120000,\"shelf\":-40.0,\"late\":1}\n");
      assertThat(reading.rows().kept()).isEqualTo(2);
      assertThat(reading.rowNotes())
          .anyMatch(note -> note.fate() == RowNote.Fate.REJECTED && note.firstLine() == 2);
    }
  }

  @Nested
  class Several_tables {
    @Test
    void one_below_the_other_become_one_log() {
      Reading reading =
          read(
              "Temperatures\ntime_utc;shelf [°C];product 1 [°C]\n"
                  + "2026-10-12T08:00:00Z;-40.0;-39.6\n2026-10-12T08:01:00Z;-40.0;-39.5\n"
                  + "\nPressures\ntime_utc;p [Pa];p Pirani [Pa];valve\n"
                  + "2026-10-12T08:00:00Z;8.1;12.8;1\n2026-10-12T08:01:00Z;8.0;12.7;1\n");
      assertThat(log(reading).time().size()).isEqualTo(2);
      assertThat(in(Role.SHELF, reading).series().goodCount()).isEqualTo(2);
      assertThat(in(Role.PRESSURE_THERMAL, reading).series().value(1)).isEqualTo(12.7);
      assertThat(reading.rows().rejected()).isLessThanOrEqualTo(1);
    }

    @Test
    void after_a_restart_with_another_header_do_not_mix_their_columns() {
      Reading reading =
          read(
              "time_utc,shelf_C,p_mbar\n2026-10-12T08:00:00Z,-40.0,0.081\n"
                  + "2026-10-12T08:01:00Z,-40.0,0.080\n"
                  + "time_utc,p_mbar,shelf_C\n2026-10-12T08:09:00Z,0.081,-30.0\n"
                  + "2026-10-12T08:10:00Z,0.082,-30.0\n");
      assertThat(in(Role.SHELF, reading).series().asWritten(2)).isEqualTo(-30.0);
      assertThat(in(Role.PRESSURE, reading).series().asWritten(3)).isEqualTo(0.082);
    }
  }

  @Nested
  class Blocks_per_step {
    @Test
    void are_one_log_with_a_marker_for_each_step() {
      Reading reading =
          read(
              "Step 1 freezing\n"
                  + "min;shelf °C;p mbar\n"
                  + "0;20.0;1000\n"
                  + "1;10.0;1000\n"
                  + "2;0.0;1000\n"
                  + "\n"
                  + "Step 2 primary drying\n"
                  + "min;shelf °C;p mbar\n"
                  + "0;-40.0;0.1\n"
                  + "1;-40.0;0.1\n"
                  + "2;-39.0;0.1\n");
      assertThat(log(reading).time().size()).isEqualTo(6);
      assertThat(log(reading).time().duration_s()).isEqualTo(300);
      assertThat(log(reading).markers())
          .anyMatch(m -> m.kind() == Marker.Kind.STEP && m.text().contains("Step 2"));
      assertThat(log(reading).markers()).noneMatch(m -> m.kind() == Marker.Kind.CLOCK_CHANGE);
    }
  }

  @Nested
  class Page_breaks {
    @Test
    void are_set_aside() {
      String head = "Harrow Fen dryer 2\ntime_utc;shelf [°C];p [Pa]\n";
      Reading reading =
          read(
              head
                  + "2026-10-12T08:00:00Z;-40.0;8.1\n2026-10-12T08:01:00Z;-40.0;8.1\n"
                  + "Page 1 of 2\n\f"
                  + head
                  + "2026-10-12T08:02:00Z;-40.0;8.1\nPage 2 of 2\n");
      assertThat(log(reading).time().size()).isEqualTo(3);
      assertThat(reading.rows().rejected()).isZero();
    }
  }

  @Nested
  class Long_tables {
    @Test
    void of_tags_at_their_own_pace_keep_each_value_at_its_time() {
      StringBuilder text = new StringBuilder("time_utc;Tag;Value;Unit\n");
      Instant start = Instant.parse("2026-10-12T08:00:00Z");
      for (int i = 0; i < 120; i++) {
        text.append(start.plusSeconds(10L * i)).append(";P_CM;8.1;Pa\n");
        if (i % 30 == 5) {
          text.append(start.plusSeconds(10L * i + 1)).append(";T_SH;").append(-i).append(".0;°C\n");
        }
      }
      Reading reading = read(text.toString());
      Channel shelf = in(Role.SHELF, reading);
      assertThat(shelf.series().goodCount()).isEqualTo(4);
      assertThat(shelf.series().asWritten(35)).isEqualTo(-35.0);
      assertThat(log(reading).time().size()).isEqualTo(120);
    }

    @Test
    void do_not_move_a_rare_value_to_an_earlier_row() {
      Reading reading =
          read(
              "time_utc;Tag;Value;Unit\n2026-10-12T08:00:00Z;P_CM;8.1;Pa\n"
                  + "2026-10-12T08:01:00Z;P_CM;8.1;Pa\n2026-10-12T08:02:00Z;P_CM;8.1;Pa\n"
                  + "2026-10-12T08:30:00Z;T_SH;-40.0;°C\n2026-10-12T08:31:00Z;P_CM;8.2;Pa\n");
      Channel shelf = in(Role.SHELF, reading);
      int row = 3;
      assertThat(shelf.series().asWritten(row)).isEqualTo(-40.0);
      assertThat(log(reading).time().instant(row)).isEqualTo(Instant.parse("2026-10-12T08:30:00Z"));
    }
  }

  @Nested
  class A_second_account_of_the_time {
    @Test
    void is_neither_a_channel_of_use_nor_a_flood_of_events() {
      Reading reading =
          read(
              "UTC;Elapsed;Shelf °C;p mbar\n"
                  + "2026-10-12 08:00:00;00:00:00;-40.0;0.081\n"
                  + "2026-10-12 08:01:00;00:01:00;-40.0;0.081\n"
                  + "2026-10-12 08:02:00;00:02:00;-40.0;0.08\n");
      assertThat(log(reading).markers()).isEmpty();
      assertThat(reading.questions()).isEmpty();
    }
  }
}
