package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * One source series written in every combination of encoding, delimiter, decimal mark, date form,
 * zone and sentinel, and read back: values must come back exactly as printed, times to the
 * millisecond, and no sentinel may become a number (R-IMP-02, 03, 05, 06, 11, 13).
 */
class CrossedLayoutsTest {
  private static final Instant START = Instant.parse("2026-10-13T21:30:00Z");
  private static final int ROWS = 240;
  private static final int STEP_S = 60;

  private record Layout(
      Encoding encoding, char delimiter, char decimal, Stamp stamp, String zone, String sentinel) {
    @Override
    public String toString() {
      String sign = delimiter == '\t' ? "tab" : String.valueOf(delimiter);
      return encoding + " " + sign + " " + decimal + " " + stamp + " " + zone + " " + sentinel;
    }
  }

  private enum Encoding {
    UTF_8("UTF-8", new byte[0]),
    UTF_8_MARKED("UTF-8", new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}),
    UTF_16LE_MARKED("UTF-16LE", new byte[] {(byte) 0xFF, (byte) 0xFE}),
    UTF_16BE("UTF-16BE", new byte[0]),
    WINDOWS_1252("windows-1252", new byte[0]),
    CP437("IBM437", new byte[0]);

    private final Charset charset;
    private final byte[] mark;

    Encoding(String name, byte[] mark) {
      this.charset = Charset.forName(name);
      this.mark = mark;
    }

    byte[] encode(String text) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.writeBytes(mark);
      out.writeBytes(text.getBytes(charset));
      return out.toByteArray();
    }
  }

  private enum Stamp {
    ISO("yyyy-MM-dd'T'HH:mm:ss"),
    ISO_SPACE("yyyy-MM-dd HH:mm:ss"),
    POINTS("dd.MM.yyyy HH:mm:ss"),
    SLASHES("MM/dd/yyyy hh:mm:ss a"),
    SHORT_YEAR("dd/MM/yy HH:mm:ss"),
    MONTH_NAME("dd-MMM-yyyy HH:mm:ss"),
    COMPACT("yyyyMMdd HHmmss");

    private final DateTimeFormatter format;

    Stamp(String pattern) {
      this.format = DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
    }

    String print(Instant moment, String zone) {
      return format.format(ZonedDateTime.ofInstant(moment, ZoneId.of(zone)));
    }
  }

  private static double shelf(int row) {
    return Math.round((-40 + 20 * Math.sin(row / 40.0)) * 10) / 10.0;
  }

  private static double pressure(int row) {
    return Math.round((0.08 + 0.01 * Math.cos(row / 17.0)) * 1e4) / 1e4;
  }

  private static boolean isSentinel(int row) {
    return row % 23 == 7;
  }

  private static String number(double value, char decimal) {
    return java.math.BigDecimal.valueOf(value).toPlainString().replace('.', decimal);
  }

  private static String text(Layout layout) {
    String d = String.valueOf(layout.delimiter());
    StringBuilder text = new StringBuilder();
    text.append(String.join(d, "Time", "Shelf [°C]", "Chamber pressure [mbar]", "Prüfung [°C]"));
    text.append("\r\n");
    for (int row = 0; row < ROWS; row++) {
      String stamp = layout.stamp().print(START.plusSeconds((long) row * STEP_S), layout.zone());
      String product =
          isSentinel(row) ? layout.sentinel() : number(shelf(row) - 8, layout.decimal());
      List<String> cells = new ArrayList<>();
      cells.add(stamp);
      cells.add(number(shelf(row), layout.decimal()));
      cells.add(number(pressure(row), layout.decimal()));
      cells.add(product);
      if (layout.decimal() == layout.delimiter()) {
        cells.replaceAll(cell -> '"' + cell + '"');
      }
      text.append(String.join(d, cells)).append("\r\n");
    }
    return text.toString();
  }

  private static Stream<Layout> layouts() {
    List<Layout> all = new ArrayList<>();
    int turn = 0;
    String[] sentinels = {"---", "OL", "NaN", "", "Err", "9999"};
    String[] zones = {"UTC", "Europe/Berlin", "America/New_York", "Asia/Kolkata"};
    for (Encoding encoding : Encoding.values()) {
      for (char delimiter : new char[] {',', ';', '\t', '|'}) {
        for (char decimal : new char[] {'.', ','}) {
          for (Stamp stamp : Stamp.values()) {
            // Zones and sentinels take turns over the full cross of the other axes.
            String zone = zones[turn % zones.length];
            String sentinel = sentinels[turn / zones.length % sentinels.length];
            all.add(new Layout(encoding, delimiter, decimal, stamp, zone, sentinel));
            turn++;
          }
        }
      }
    }
    return all.stream();
  }

  @TestFactory
  Stream<DynamicTest> gives_back_what_was_written() {
    return layouts().map(layout -> DynamicTest.dynamicTest(layout.toString(), () -> check(layout)));
  }

  private static void check(Layout layout) {
    Reading reading =
        new LogReader()
            .read(
                "crossed.csv",
                layout.encoding().encode(text(layout)),
                ReadingChoices.none().withZone(ZoneId.of(layout.zone())));
    Log log = reading.log().orElseThrow(() -> new AssertionError(reading.problems().toString()));
    assertThat(reading.rows().kept()).isEqualTo(ROWS);
    assertThat(reading.layout().decimalMark()).isEqualTo(String.valueOf(layout.decimal()));
    assertThat(log.channels())
        .extracting(Channel::name)
        .containsExactly("Shelf", "Chamber pressure", "Prüfung");
    for (int row = 0; row < ROWS; row++) {
      assertThat(log.time().instant(row)).isEqualTo(START.plusSeconds((long) row * STEP_S));
      assertThat(log.channels().get(0).series().asWritten(row)).isEqualTo(shelf(row));
      assertThat(log.channels().get(1).series().asWritten(row)).isEqualTo(pressure(row));
      Quality quality = log.channels().get(2).series().quality(row);
      assertThat(quality == Quality.GOOD).isEqualTo(!isSentinel(row));
    }
  }
}
