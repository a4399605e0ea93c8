package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** R-IMP-20: packed files and spreadsheets are read; hostile ones are refused with the reason. */
class PackedFilesTest {
  private static final String HEAD = "time_utc,shelf_C,product_C,p_mbar,collector_C\n";
  private static final String TEXTS =
      "<si><t>time UTC</t></si><si><t>Shelf [°C]</t></si><si><r><t>Chamber </t></r><r><t>pressure"
          + " [Pa]</t></r></si><si><t>Note</t></si><si><t>door &amp; valve shut</t></si>";

  private static String rows(int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < to; i++) {
      text.append(String.format("2026-10-12T08:%02d:00Z,-40.0,-39.6,0.081,-54.2\n", i));
    }
    return text.toString();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static Reading read(byte[] bytes) {
    return new LogReader().read("run", bytes);
  }

  private static String refusal(byte[] bytes) {
    Reading reading = read(bytes);
    assertThat(reading.log()).isEmpty();
    return reading.problems().get(0).rule();
  }

  private static Channel channel(Reading reading, Role role) {
    return reading.log().orElseThrow().findChannelIn(role).orElseThrow();
  }

  @Nested
  class Archives {
    @Test
    void in_gzip_and_zip_are_read() {
      byte[] plain = bytes(HEAD + rows(0, 20));
      assertThat(read(PackedFiles.gzip(plain)).rows().kept()).isEqualTo(20);
      assertThat(read(PackedFiles.zip("run.csv", HEAD + rows(0, 20))).rows().kept()).isEqualTo(20);
    }

    @Test
    void with_several_logs_are_one_run() {
      Reading reading =
          read(
              PackedFiles.zip(
                  "day/2.csv",
                  HEAD + rows(5, 20),
                  "day/1.csv",
                  HEAD + rows(0, 10),
                  "__MACOSX/._1.csv",
                  "x",
                  "day/.hidden",
                  "y"));
      assertThat(reading.log().orElseThrow().time().size()).isEqualTo(20);
      assertThat(reading.rows().read()).isEqualTo(25);
      assertThat(reading.guesses()).anyMatch(guess -> guess.value().equals("5 left out"));
    }

    @Test
    void keep_what_can_be_read_and_name_what_cannot() {
      Reading reading =
          read(PackedFiles.zip("run.csv", HEAD + rows(0, 10), "readme.txt", "made by the dryer"));
      assertThat(reading.log()).isPresent();
      assertThat(reading.problems()).anyMatch(p -> p.where().contains("readme.txt"));
    }

    @Test
    void without_a_file_are_refused() {
      assertThat(refusal(PackedFiles.zip("folder/", ""))).contains("holds no file");
    }

    @Test
    void inside_archives_are_refused() {
      byte[] inner = PackedFiles.zip("run.csv", HEAD + rows(0, 5));
      assertThat(refusal(PackedFiles.zip(java.util.Map.of("inner.zip", inner))))
          .contains("inner.zip is itself a packed file");
      assertThat(refusal(PackedFiles.gzip(inner))).contains("itself a packed file");
    }

    @Test
    void that_name_a_place_outside_are_refused() {
      for (String name : new String[] {"../run.csv", "/etc/run.csv", "a\\..\\b", "C:\\run.csv"}) {
        assertThat(refusal(PackedFiles.zip(name, HEAD + rows(0, 5))))
            .contains("outside itself")
            .contains(name);
      }
    }

    @Test
    void that_grow_without_end_are_refused() {
      byte[] zeros = new byte[80 << 20];
      assertThat(refusal(PackedFiles.gzip(zeros))).contains("more than a packed log can hold");
      assertThat(refusal(PackedFiles.zip(java.util.Map.of("zeros.csv", zeros))))
          .contains("more than a packed log can hold");
    }

    @Test
    void that_end_too_early_are_refused() {
      byte[] whole = PackedFiles.gzip(bytes(HEAD + rows(0, 50)));
      assertThat(refusal(Arrays.copyOf(whole, whole.length / 2))).isNotBlank();
      byte[] zip = PackedFiles.zip("run.csv", HEAD + rows(0, 50));
      assertThat(refusal(Arrays.copyOf(zip, zip.length / 3))).isNotBlank();
    }

    @Test
    void that_declare_gigantic_sizes_cost_nothing() {
      byte[] zip = PackedFiles.zip("run.csv", HEAD + rows(0, 5));
      for (int i = 18; i < 26; i++) {
        zip[i] = (byte) 0xFF; // the sizes of the first entry's own header
      }
      Reading reading = read(zip);
      assertThat(reading.log().isPresent() || !reading.problems().isEmpty()).isTrue();
    }

    @Test
    void of_other_programs_are_named() {
      byte[] old = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0};
      assertThat(refusal(old)).contains("old binary workbook");
      assertThat(refusal(bytes("%PDF-1.7 and so on"))).contains("PDF");
    }
  }

  @Nested
  class Workbooks {
    private static final String SHEET =
        "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Harrow Fen, dryer 2</t></is></c></row>"
            + "<row r=\"3\"><c r=\"A3\" t=\"s\"><v>0</v></c><c r=\"B3\" t=\"s\"><v>1</v></c>"
            + "<c r=\"C3\" t=\"s\"><v>2</v></c><c r=\"D3\" t=\"s\"><v>3</v></c></row>"
            + "<row r=\"4\"><c r=\"A4\" s=\"1\"><v>46307.333333333336</v></c><c r=\"B4\">"
            + "<v>-39.600000000000001</v></c><c r=\"C4\"><f>HYPERLINK(\"http://x\")</f><v>8.1</v>"
            + "</c><c r=\"D4\" t=\"s\"><v>4</v></c></row>"
            + "<row r=\"5\"><c r=\"A5\" s=\"1\"><v>46307.334027777775</v></c>"
            + "<c r=\"C5\" t=\"e\"><v>#N/A</v></c></row>"
            + "<row r=\"6\"><c r=\"A6\" s=\"1\"><v>46307.334722222222</v></c><c r=\"B6\">"
            + "<v>-4.0000000000000001E1</v></c><c r=\"C6\"><v>8</v></c></row>";

    private final Reading reading = read(PackedFiles.workbook(SHEET, TEXTS));

    @Test
    void give_dates_texts_and_stored_values() {
      Log log = reading.log().orElseThrow();
      assertThat(log.time().instant(0)).isEqualTo(Instant.parse("2026-10-12T08:00:00Z"));
      assertThat(log.time().instant(2)).isEqualTo(Instant.parse("2026-10-12T08:02:00Z"));
      assertThat(channel(reading, Role.SHELF).series().asWritten(0)).isEqualTo(-39.6);
      assertThat(channel(reading, Role.SHELF).series().asWritten(2)).isEqualTo(-40.0);
      assertThat(channel(reading, Role.PRESSURE).name()).isEqualTo("Chamber pressure");
      assertThat(channel(reading, Role.PRESSURE).series().value(0)).isEqualTo(8.1);
      assertThat(channel(reading, Role.MESSAGE).labels()).containsExactly("door & valve shut");
    }

    @Test
    void keep_empty_cells_and_errors_apart_from_numbers() {
      assertThat(channel(reading, Role.SHELF).series().quality(1)).isEqualTo(Quality.MISSING);
      assertThat(channel(reading, Role.PRESSURE).series().quality(1)).isEqualTo(Quality.MISSING);
      assertThat(reading.rowNotes()).anyMatch(note -> note.firstLine() == 5);
    }

    @Test
    void say_that_they_are_sheets() {
      assertThat(reading.layout().form()).isEqualTo("sheet");
      assertThat(reading.layout().headerLines()).containsExactly(3L);
      assertThat(reading.questions()).isEmpty();
    }

    @Test
    void count_hours_beyond_a_day() {
      String sheet =
          "<row r=\"1\"><c t=\"str\"><v>Elapsed</v></c><c t=\"str\"><v>Shelf C</v></c>"
              + "<c t=\"str\"><v>P mTorr</v></c></row>"
              + "<row r=\"2\"><c s=\"2\"><v>0.999305555555556</v></c><c><v>-20</v></c>"
              + "<c><v>75</v></c></row>"
              + "<row r=\"3\"><c s=\"2\"><v>1.0626736111111111</v></c><c><v>-20</v></c>"
              + "<c><v>75</v></c></row>";
      Reading elapsed = read(PackedFiles.workbook(sheet, ""));
      assertThat(elapsed.log().orElseThrow().time().elapsed_s(1)).isCloseTo(5475, within(1e-9));
    }

    @Test
    void with_entities_are_refused() {
      byte[] bomb =
          PackedFiles.zip(
              "xl/workbook.xml",
              "<!DOCTYPE w [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>"
                  + "<workbook><sheets><sheet name=\"&b;\"/></sheets></workbook>");
      assertThat(refusal(bomb)).contains("declares entities");
      byte[] outside =
          PackedFiles.openDocument(
              "<t:table-row><t:table-cell><x:p>&secret;</x:p></t:table-cell></t:table-row>");
      assertThat(refusal(outside)).contains("XML is broken");
    }

    @Test
    void that_are_broken_or_empty_are_refused() {
      assertThat(refusal(PackedFiles.workbook("<row><c><v>1</c>", ""))).contains("broken");
      assertThat(refusal(PackedFiles.zip("xl/workbook.xml", "<workbook><sheets/></workbook>")))
          .contains("no sheet");
      assertThat(refusal(PackedFiles.zip("content.xml", "<d><text/></d>")))
          .contains("without a spreadsheet");
      String wide = "<row><c r=\"ZZZ1\"><v>1</v></c></row>";
      assertThat(refusal(PackedFiles.workbook(wide, ""))).contains("columns");
    }
  }

  @Nested
  class Open_documents {
    private static String cell(String type, String value) {
      return "<t:table-cell o:value-type=\"" + type + "\" " + value + "/>";
    }

    private static String row(String... cells) {
      return "<t:table-row>" + String.join("", cells) + "</t:table-row>";
    }

    private static String text(String words) {
      return "<t:table-cell o:value-type=\"string\"><x:p>" + words + "</x:p></t:table-cell>";
    }

    @Test
    void are_read_with_repeats_and_hours() {
      Reading reading =
          read(
              PackedFiles.openDocument(
                  row(text("time UTC"), text("Shelf <x:s/>°C"), text("p Pa"), text("Step"))
                      + row(
                          cell("date", "o:date-value=\"2026-10-12T08:00:00\""),
                          cell("float", "o:value=\"-40.1\" t:number-columns-repeated=\"2\""),
                          cell("float", "o:value=\"3\""),
                          "<t:covered-table-cell/><t:table-cell"
                              + " t:number-columns-repeated=\"16380\"/>")
                      + row(
                          cell("date", "o:date-value=\"2026-10-12T08:01:00\""),
                          cell("float", "o:value=\"-40.2\""),
                          "<t:table-cell/>",
                          cell("float", "o:value=\"3\""))
                      + "<t:table-row"
                      + " t:number-rows-repeated=\"1048000\"><t:table-cell/></t:table-row>"));
      Log log = reading.log().orElseThrow();
      assertThat(log.time().size()).isEqualTo(2);
      assertThat(channel(reading, Role.SHELF).series().asWritten(1)).isEqualTo(-40.2);
      assertThat(channel(reading, Role.PRESSURE).series().quality(1)).isEqualTo(Quality.MISSING);
      assertThat(channel(reading, Role.STEP_NUMBER).series().value(1)).isEqualTo(3);
    }

    @Test
    void count_times_as_elapsed() {
      Reading reading =
          read(
              PackedFiles.openDocument(
                  row(text("Elapsed"), text("Shelf °C"))
                      + row(
                          cell("time", "o:time-value=\"PT23H59M00S\""),
                          cell("float", "o:value=\"-1\""))
                      + row(
                          cell("time", "o:time-value=\"PT25H30M15.5S\""),
                          cell("float", "o:value=\"-1\""))));
      assertThat(reading.log().orElseThrow().time().elapsed_s(1)).isCloseTo(5475.5, within(1e-9));
    }
  }
}
