package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One invented run written in every combination of what loggers differ in must read the same. */
class ManyLayoutsTest {

  private static final int ROWS = 60;
  private static final LocalDateTime START = LocalDateTime.of(2026, 10, 13, 23, 40);

  /** How one logger writes. */
  record Dialect(
      Charset charset, String mark, char delimiter, char decimal, String date, String missing) {

    @Override
    public String toString() {
      return String.join(
          " ",
          charset.name() + (mark.isEmpty() ? "" : "+BOM"),
          delimiter == '\t' ? "tab" : String.valueOf(delimiter),
          String.valueOf(decimal),
          date,
          missing.isEmpty() ? "blank" : missing);
    }
  }

  static Stream<Dialect> dialects() {
    List<Dialect> dialects = new ArrayList<>();
    List<Charset> charsets =
        List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"), StandardCharsets.UTF_16LE);
    for (Charset charset : charsets) {
      for (char delimiter : new char[] {',', ';', '\t', '|'}) {
        for (char decimal : new char[] {'.', ','}) {
          for (String date :
              List.of("yyyy-MM-dd HH:mm:ss", "dd.MM.yyyy HH:mm:ss", "MM/dd/yyyy HH:mm:ss")) {
            for (String missing : List.of("", "---", "NaN")) {
              if (delimiter != decimal) {
                String mark = charset.equals(StandardCharsets.UTF_16LE) ? "\uFEFF" : "";
                dialects.add(new Dialect(charset, mark, delimiter, decimal, date, missing));
              }
            }
          }
        }
      }
    }
    return dialects.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("dialects")
  void readsTheSameSeries(Dialect dialect) {
    Reading reading =
        new LogReader()
            .read(
                "run.txt",
                (dialect.mark() + text(dialect)).getBytes(dialect.charset()),
                ReadingChoices.none().withZone(ZoneOffset.UTC));
    Log log = reading.log().orElseThrow();
    assertThat(reading.rows().kept()).isEqualTo(ROWS);
    assertThat(log.start()).contains(START.toInstant(ZoneOffset.UTC));
    assertThat(log.time().duration_s()).isEqualTo(60.0 * (ROWS - 1));
    Channel shelf = log.channels().get(0);
    Channel product = log.channels().get(1);
    Channel pressure = log.channels().get(2);
    for (int row = 0; row < ROWS; row++) {
      assertThat(shelf.series().value(row)).isCloseTo(shelf(row) + 273.15, within(1e-4));
      assertThat(pressure.series().value(row)).isCloseTo(100 * pressure(row), within(1e-3));
      if (row % 9 == 4) {
        assertThat(product.series().quality(row)).isNotEqualTo(Quality.GOOD);
      } else {
        assertThat(product.series().value(row)).isCloseTo(shelf(row) - 7 + 273.15, within(1e-4));
      }
    }
  }

  private static double shelf(int row) {
    return Math.round(10 * (-40 + 0.25 * row)) / 10.0;
  }

  private static double pressure(int row) {
    return (80 + row % 5) / 1_000.0;
  }

  private static String text(Dialect dialect) {
    StringBuilder text = new StringBuilder();
    line(text, dialect, "Time", "Shelf [°C]", "Product 1 [°C]", "Chamber pressure [mbar]");
    DateTimeFormatter format = DateTimeFormatter.ofPattern(dialect.date(), Locale.ROOT);
    for (int row = 0; row < ROWS; row++) {
      line(
          text,
          dialect,
          START.plusMinutes(row).format(format),
          number(dialect, "%.1f", shelf(row)),
          row % 9 == 4 ? dialect.missing() : number(dialect, "%.1f", shelf(row) - 7),
          number(dialect, "%.3f", pressure(row)));
    }
    return text.toString();
  }

  private static String number(Dialect dialect, String format, double value) {
    return String.format(Locale.ROOT, format, value).replace('.', dialect.decimal());
  }

  private static void line(StringBuilder text, Dialect dialect, String... cells) {
    text.append(String.join(String.valueOf(dialect.delimiter()), cells)).append("\r\n");
  }
}
