package org.firnline.logs;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.layout.ColumnUnit;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.Topic;
import org.firnline.logs.layout.UnitSpellings;
import org.firnline.logs.layout.Vocabulary;
import org.firnline.logs.stamp.DateFields;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.stamp.ZoneWords;
import org.firnline.logs.text.PlainWords;

/** The lines before the table, and what they tell about it: zone, start, interval, columns. */
final class Preamble {
  private static final List<String> ZONE_KEYS =
      List.of("zeitzone", "timezone", "zone", "tz", "fuseau", "huso", "fuso");
  private static final List<String> START_KEYS =
      List.of("start", "started", "begin", "beginn", "gestartet", "debut", "inicio", "inizio");
  private static final List<String> INTERVAL_KEYS =
      List.of("interval", "intervall", "intervalle", "intervalo", "intervallo", "sampling");

  private final List<PreambleEntry> entries;
  private final StampScan stamps;
  private final ZoneWords zones = new ZoneWords();

  private Preamble(List<PreambleEntry> entries, StampScan stamps) {
    this.entries = entries;
    this.stamps = stamps;
  }

  static Preamble of(List<SampleLine> lines, char delimiter, StampScan stamps) {
    List<PreambleEntry> entries = new ArrayList<>();
    for (SampleLine line : lines) {
      String text = line.text().replace("\uFEFF", "").strip();
      if (!text.isEmpty() && !text.toLowerCase(Locale.ROOT).startsWith("sep=")) {
        entries.add(entry(line.number(), text, delimiter));
      }
    }
    return new Preamble(entries, stamps);
  }

  private static PreambleEntry entry(long line, String text, char delimiter) {
    String bare = text.replaceFirst("^(#|//)+\\s*", "");
    int cut = -1;
    for (String separator : List.of(";", "\t", "=", ": ", String.valueOf(delimiter))) {
      int at = separator.isBlank() ? -1 : bare.indexOf(separator);
      cut = at > 0 && (cut < 0 || at < cut) ? at : cut;
    }
    if (cut < 0 && bare.endsWith(":")) {
      cut = bare.length() - 1;
    }
    if (cut < 0) {
      return new PreambleEntry(line, unquoted(bare), "");
    }
    String value = bare.substring(cut + 1).replaceAll("[;,\\t]+$", "");
    return new PreambleEntry(line, unquoted(bare.substring(0, cut)), unquoted(value));
  }

  private static String unquoted(String text) {
    String bare = text.strip();
    boolean quoted = bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"");
    return (quoted ? bare.substring(1, bare.length() - 1) : bare).strip();
  }

  List<PreambleEntry> entries() {
    return entries;
  }

  /** The zone the preamble names. */
  Optional<ZoneId> zone() {
    return values(ZONE_KEYS)
        .map(PreambleEntry::value)
        .flatMap(v -> zones.find(v).stream())
        .findFirst();
  }

  /** The sampling interval the preamble names, in seconds. */
  Optional<Double> interval_s(UnitSpellings units) {
    return values(INTERVAL_KEYS)
        .flatMap(
            entry -> {
              String[] parts =
                  entry.value().replace(',', '.').split("(?<=\\d)\\s*(?=[^\\d.\\s])", 2);
              boolean sound = parts.length == 2 && parts[0].matches("\\d+(\\.\\d+)?");
              return sound
                  ? units.find(parts[1]).filter(ColumnUnit::isTime).stream()
                      .map(unit -> Double.parseDouble(parts[0]) * unit.factor())
                  : java.util.stream.Stream.<Double>empty();
            })
        .findFirst();
  }

  /** The start the preamble names: local milliseconds as if they were UTC. */
  Optional<Long> startLocal_ms() {
    return values(START_KEYS).flatMap(entry -> local(entry.value()).stream()).findFirst();
  }

  /** The days the preamble names without ambiguity. */
  List<LocalDate> days() {
    List<LocalDate> days = new ArrayList<>();
    for (PreambleEntry entry : entries) {
      Stamp stamp = stamps.scan(entry.value());
      if (stamp.kind() == Stamp.Kind.DATE || stamp.kind() == Stamp.Kind.DATE_TIME) {
        DateFields date = stamp.dateFields();
        if (date.firstDigits() == 4 || date.month() > 0) {
          date.in(DateFields.Order.YEAR_MONTH_DAY).ifPresent(days::add);
        } else {
          Optional<LocalDate> dayFirst = date.in(DateFields.Order.DAY_MONTH_YEAR);
          Optional<LocalDate> monthFirst = date.in(DateFields.Order.MONTH_DAY_YEAR);
          boolean points = date.separator() == '.';
          if (dayFirst.isPresent() && (points || monthFirst.isEmpty())) {
            days.add(dayFirst.get());
          } else if (dayFirst.isEmpty()) {
            monthFirst.ifPresent(days::add);
          }
        }
      }
    }
    return days;
  }

  private Optional<Long> local(String text) {
    Stamp stamp = stamps.scan(text);
    if (stamp.kind() != Stamp.Kind.DATE_TIME && stamp.kind() != Stamp.Kind.DATE) {
      return Optional.empty();
    }
    DateFields date = stamp.dateFields();
    long clock = stamp.millis();
    for (DateFields.Order order :
        List.of(
            DateFields.Order.YEAR_MONTH_DAY,
            DateFields.Order.DAY_MONTH_YEAR,
            DateFields.Order.MONTH_DAY_YEAR)) {
      Optional<LocalDate> day = date.in(order);
      if (day.isPresent()) {
        return Optional.of(
            day.get().atStartOfDay().toInstant(ZoneOffset.UTC).toEpochMilli() + clock);
      }
    }
    return Optional.empty();
  }

  private java.util.stream.Stream<PreambleEntry> values(List<String> keys) {
    return entries.stream()
        .filter(entry -> PlainWords.split(entry.key()).stream().anyMatch(keys::contains));
  }

  /** What a table of channels in the preamble says about a column, empty if nothing. */
  String descriptionOf(String column) {
    String wanted = PlainWords.fold(column);
    return entries.stream()
        .filter(entry -> PlainWords.fold(entry.key()).equals(wanted))
        .map(PreambleEntry::value)
        .findFirst()
        .orElse("");
  }

  /** Whether any word of a topic stands in the preamble's keys. */
  boolean mentions(Vocabulary vocabulary, Topic topic) {
    return entries.stream()
        .anyMatch(
            entry -> {
              Map<Topic, Integer> topics = vocabulary.topicsOf(entry.key());
              return topics.containsKey(topic);
            });
  }
}
