package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.firnline.logs.ReadingChoices;
import org.firnline.logs.SharedLogs;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.units.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The same run written by quite different loggers must get the same review: other languages, units,
 * dates, separators, samplings; with a gauge or the set point missing.
 */
class SameRunOtherLayoutTest {
  private static final String SOURCE = "log01-plain.csv";

  /** How another logger writes the run. */
  private record Logger(
      String label,
      String charset,
      String delimiter,
      char decimal,
      String stamp,
      String zone,
      String temperature,
      String pressure,
      int every,
      List<String> names) {
    @Override
    public String toString() {
      return label;
    }
  }

  private static List<Logger> loggers() {
    return List.of(
        new Logger(
            "American",
            "UTF-8",
            ",",
            '.',
            "M/d/yyyy h:mm:ss a",
            "America/New_York",
            "°F",
            "mTorr",
            1,
            List.of(
                "Date/Time",
                "Shelf SP (F)",
                "Shelf PV (F)",
                "Chamber CM (mTorr)",
                "Chamber Pirani (mTorr)",
                "Condenser (F)",
                "TC1 (F)",
                "TC2 (F)",
                "TC3 (F)")),
        new Logger(
            "French",
            "windows-1252",
            ";",
            ',',
            "dd/MM/yyyy HH:mm:ss",
            "Europe/Paris",
            "°C",
            "mbar",
            1,
            List.of(
                "Horodatage",
                "Consigne étagère (°C)",
                "Étagère (°C)",
                "Pression capacitive (mbar)",
                "Pression Pirani (mbar)",
                "Piège (°C)",
                "Produit 1 (°C)",
                "Produit 2 (°C)",
                "Produit 3 (°C)")),
        new Logger(
            "Spanish",
            "UTF-8",
            "\t",
            ',',
            "dd-MM-yyyy HH:mm:ss",
            "Europe/Madrid",
            "°C",
            "µbar",
            2,
            List.of(
                "Fecha y hora",
                "Consigna placa [°C]",
                "Placa [°C]",
                "Presión capacitiva [µbar]",
                "Presión térmica [µbar]",
                "Condensador [°C]",
                "Producto A [°C]",
                "Producto B [°C]",
                "Producto C [°C]")),
        new Logger(
            "Italian",
            "UTF-16LE",
            ";",
            ',',
            "yyyy-MM-dd HH:mm:ss,SSS",
            "Europe/Rome",
            "°C",
            "Pa",
            1,
            List.of(
                "Data e ora",
                "Ripiano impostato °C",
                "Ripiano °C",
                "Pressione capacitiva Pa",
                "Vuoto Pirani Pa",
                "Condensatore °C",
                "Prodotto 1 °C",
                "Prodotto 2 °C",
                "Prodotto 3 °C")),
        new Logger(
            "German without set point",
            "windows-1252",
            ";",
            ',',
            "dd.MM.yy HH:mm",
            "Europe/Berlin",
            "°C",
            "hPa",
            1,
            List.of(
                "Zeitstempel",
                "",
                "Plattentemperatur °C",
                "Kammerdruck kapazitiv hPa",
                "Kammerdruck Wärmeleitung hPa",
                "Eiskondensator °C",
                "Produktfühler 1 °C",
                "Produktfühler 2 °C",
                "Produktfühler 3 °C")),
        new Logger(
            "bare names, gauges by their values",
            "UTF-8",
            ",",
            '.',
            "yyyyMMdd'T'HHmmss'Z'",
            "UTC",
            "°C",
            "mbar",
            1,
            List.of(
                "t", "", "shelf", "P1 mbar", "P2 mbar", "trap", "probe 1", "probe 2", "probe 3")),
        new Logger(
            "five-minute samples in Torr",
            "UTF-8",
            "|",
            '.',
            "yyyy-MM-dd HH:mm",
            "UTC",
            "K",
            "Torr",
            5,
            List.of(
                "time",
                "shelf setpoint K",
                "shelf K",
                "cap Torr",
                "pirani Torr",
                "condenser K",
                "product 1 K",
                "product 2 K",
                "product 3 K")));
  }

  private static byte[] written(Log log, Logger logger) {
    StringBuilder text = new StringBuilder();
    List<String> head = new ArrayList<>(logger.names());
    head.removeIf(String::isEmpty);
    text.append(String.join(logger.delimiter(), head)).append("\r\n");
    DateTimeFormatter stamp = DateTimeFormatter.ofPattern(logger.stamp(), Locale.ENGLISH);
    for (int row = 0; row < log.time().size(); row += logger.every()) {
      ZonedDateTime local = log.time().instant(row).atZone(ZoneId.of(logger.zone()));
      text.append(stamp.format(local));
      for (int c = 0; c < log.channels().size(); c++) {
        if (!logger.names().get(c + 1).isEmpty()) {
          text.append(logger.delimiter()).append(cell(log.channels().get(c), row, logger));
        }
      }
      text.append("\r\n");
    }
    return text.toString().getBytes(Charset.forName(logger.charset()));
  }

  private static String cell(Channel channel, int row, Logger logger) {
    boolean temperature = channel.role().dimension().siUnit().equals("K");
    Unit unit = Unit.parse(temperature ? logger.temperature() : logger.pressure());
    double value = unit.fromSi(channel.series().value(row));
    String text = String.format(Locale.ROOT, temperature ? "%.2f" : "%.6g", value);
    return text.replace('.', logger.decimal());
  }

  @ParameterizedTest
  @MethodSource("loggers")
  void has_the_same_review(Logger logger) {
    Log source = SharedLogs.read(SOURCE);
    Review wanted = new Reviewer().review(source, ReviewContext.none());
    Reading reading =
        new LogReader()
            .read(
                "other.csv",
                written(source, logger),
                ReadingChoices.none().withZone(ZoneId.of(logger.zone())));
    Log log = reading.log().orElseThrow();
    assertThat(reading.rows().rejected()).isZero();
    assertThat(reading.questions()).isEmpty();
    List<Role> roles = new ArrayList<>();
    for (int i = 0; i < source.channels().size(); i++) {
      if (!logger.names().get(i + 1).isEmpty()) {
        roles.add(source.channels().get(i).role());
      }
    }
    assertThat(log.channels()).extracting(Channel::role).containsExactlyElementsOf(roles);
    Review review = new Reviewer().review(log, ReviewContext.none());
    double step = logger.every() * 60.0;
    for (int i = 0; i < wanted.phases().size(); i++) {
      assertThat(review.phases().get(i).start().getEpochSecond())
          .isCloseTo(wanted.phases().get(i).start().getEpochSecond(), within((long) (600 + step)));
    }
    assertThat(ends(review)).as(review.endpoints().toString()).hasSameSizeAs(ends(wanted));
    for (int i = 0; i < ends(wanted).size(); i++) {
      assertThat(ends(review).get(i)).isCloseTo(ends(wanted).get(i), within(1200 + step));
    }
    assertThat(review.findings())
        .extracting(Finding::kind)
        .containsExactlyElementsOf(wanted.findings().stream().map(Finding::kind).toList());
  }

  private static List<Double> ends(Review review) {
    return review.endpoints().stream()
        .map(Endpoint::at)
        .flatMap(Optional::stream)
        .map(at -> at.toEpochMilli() / 1000.0)
        .toList();
  }
}
