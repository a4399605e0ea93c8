package org.firnline.app.demo;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Moves an invented log to recent days, so that the demo laboratory looks lived in. */
final class RecentLog {
  private static final DateTimeFormatter DOTTED =
      DateTimeFormatter.ofPattern("dd.MM.yyyy", Locale.ROOT);

  private RecentLog() {}

  /**
   * A log with ISO times in its first column, moved so that it started {@code ago} before {@code
   * now} and ends now: a run under way.
   */
  static byte[] underWay(byte[] log, Instant now, Duration ago) {
    List<String> lines = new String(log, StandardCharsets.UTF_8).lines().toList();
    Instant first = Instant.parse(firstCell(lines.get(1)));
    Instant start = now.minus(ago).truncatedTo(ChronoUnit.MINUTES);
    Duration shift = Duration.between(first, start);
    String moved =
        lines.stream()
            .skip(1)
            .map(line -> new Row(Instant.parse(firstCell(line)).plus(shift), rest(line)))
            .filter(row -> !row.at().isAfter(now))
            .map(row -> row.at() + row.rest() + "\n")
            .collect(Collectors.joining());
    return (lines.get(0) + "\n" + moved).getBytes(StandardCharsets.UTF_8);
  }

  private record Row(Instant at, String rest) {}

  /** A log with epoch milliseconds in its first column, moved to end at {@code end}. */
  static byte[] endingAt(byte[] log, Instant end) {
    List<String> lines = new String(log, StandardCharsets.UTF_8).lines().toList();
    long last = Long.parseLong(firstCell(lines.get(lines.size() - 1)));
    long shift = end.toEpochMilli() - last;
    return eachLine(
        lines,
        line ->
            Character.isDigit(line.charAt(0))
                ? Long.parseLong(firstCell(line)) + shift + rest(line)
                : line,
        StandardCharsets.UTF_8);
  }

  /** A log with dotted dates in its first column, moved to end on {@code lastDay}. */
  static byte[] endingOn(byte[] log, LocalDate lastDay) {
    List<String> lines = new String(log, StandardCharsets.ISO_8859_1).lines().toList();
    LocalDate end =
        lines.stream()
            .flatMap(line -> dottedDate(line).stream())
            .max(LocalDate::compareTo)
            .orElseThrow();
    long days = ChronoUnit.DAYS.between(end, lastDay);
    return eachLine(
        lines,
        line ->
            dottedDate(line)
                .map(date -> DOTTED.format(date.plusDays(days)) + line.substring(10))
                .orElse(line),
        StandardCharsets.ISO_8859_1);
  }

  private static byte[] eachLine(
      List<String> lines, UnaryOperator<String> move, java.nio.charset.Charset encoding) {
    return lines.stream()
        .map(line -> line.isEmpty() ? line : move.apply(line))
        .collect(Collectors.joining("\n", "", "\n"))
        .getBytes(encoding);
  }

  private static Optional<LocalDate> dottedDate(String line) {
    return line.matches("[0-9]{2}\\.[0-9]{2}\\.[0-9]{4}.*")
        ? Optional.of(LocalDate.parse(line.substring(0, 10), DOTTED))
        : Optional.empty();
  }

  private static String firstCell(String line) {
    return line.substring(0, line.indexOf(','));
  }

  private static String rest(String line) {
    return line.substring(line.indexOf(','));
  }
}
