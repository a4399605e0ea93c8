package org.firnline.logs;

import java.nio.charset.Charset;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a person, or the settings of a source, have decided about a file. Everything is optional;
 * what is absent is worked out from the file.
 *
 * @param encoding character set of the file
 * @param delimiter field separator
 * @param decimalMark '.' or ','
 * @param dateOrder order of day, month and year
 * @param zone zone of stamps that carry none
 * @param clockNeverChanges true if the logger stays on standard time the whole year
 * @param start time of the first row, for files with only elapsed time
 * @param fileTime when the file was last written; only helps to judge a start
 * @param columns what is known about single columns, by header as written, or "#" and the column
 *     number from 1
 * @param clockOffsets by how much a logger's clock is ahead of the run's main logger, by name of
 *     its file
 */
public record ReadingChoices(
    Optional<Charset> encoding,
    Optional<Character> delimiter,
    Optional<Character> decimalMark,
    Optional<DateOrder> dateOrder,
    Optional<ZoneId> zone,
    boolean clockNeverChanges,
    Optional<Instant> start,
    Optional<Instant> fileTime,
    Map<String, ColumnChoice> columns,
    Map<String, Duration> clockOffsets) {

  public ReadingChoices {
    Objects.requireNonNull(encoding, "encoding");
    Objects.requireNonNull(delimiter, "delimiter");
    Objects.requireNonNull(decimalMark, "decimalMark");
    Objects.requireNonNull(dateOrder, "dateOrder");
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(fileTime, "fileTime");
    columns = Map.copyOf(columns);
    clockOffsets = Map.copyOf(clockOffsets);
    if (decimalMark.isPresent() && decimalMark.get() != '.' && decimalMark.get() != ',') {
      throw new IllegalArgumentException(
          "decimal mark '" + decimalMark.get() + "': must be a point or a comma");
    }
  }

  /** Nothing decided: everything is worked out from the file. */
  public static ReadingChoices none() {
    return new ReadingChoices(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Map.of());
  }

  /** These choices for a table that was rewritten: its encoding and delimiter are our own. */
  ReadingChoices forRewritten() {
    return new ReadingChoices(
        Optional.empty(),
        Optional.of('\t'),
        decimalMark,
        dateOrder,
        zone,
        clockNeverChanges,
        start,
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices with a zone for stamps that carry none. */
  public ReadingChoices withZone(ZoneId value) {
    return new ReadingChoices(
        encoding,
        delimiter,
        decimalMark,
        dateOrder,
        Optional.of(value),
        clockNeverChanges,
        start,
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices with an order of day, month and year. */
  public ReadingChoices withDateOrder(DateOrder value) {
    return new ReadingChoices(
        encoding,
        delimiter,
        decimalMark,
        Optional.of(value),
        zone,
        clockNeverChanges,
        start,
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices with the time of the first row. */
  public ReadingChoices withStart(Instant value) {
    return new ReadingChoices(
        encoding,
        delimiter,
        decimalMark,
        dateOrder,
        zone,
        clockNeverChanges,
        Optional.of(value),
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices with other column choices. */
  public ReadingChoices withColumns(Map<String, ColumnChoice> value) {
    return new ReadingChoices(
        encoding,
        delimiter,
        decimalMark,
        dateOrder,
        zone,
        clockNeverChanges,
        start,
        fileTime,
        value,
        clockOffsets);
  }

  /** These choices with a character set. */
  public ReadingChoices withEncoding(Charset value) {
    return new ReadingChoices(
        Optional.of(value),
        delimiter,
        decimalMark,
        dateOrder,
        zone,
        clockNeverChanges,
        start,
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices with a field separator. */
  public ReadingChoices withDelimiter(char value) {
    return new ReadingChoices(
        encoding,
        Optional.of(value),
        decimalMark,
        dateOrder,
        zone,
        clockNeverChanges,
        start,
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices with a decimal mark, '.' or ','. */
  public ReadingChoices withDecimalMark(char value) {
    return new ReadingChoices(
        encoding,
        delimiter,
        Optional.of(value),
        dateOrder,
        zone,
        clockNeverChanges,
        start,
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices for a logger whose clock stays on one offset the whole year, or does not. */
  public ReadingChoices withClockNeverChanges(boolean value) {
    return new ReadingChoices(
        encoding,
        delimiter,
        decimalMark,
        dateOrder,
        zone,
        value,
        start,
        fileTime,
        columns,
        clockOffsets);
  }

  /** These choices with offsets between loggers' clocks. */
  public ReadingChoices withClockOffsets(Map<String, Duration> value) {
    return new ReadingChoices(
        encoding,
        delimiter,
        decimalMark,
        dateOrder,
        zone,
        clockNeverChanges,
        start,
        fileTime,
        columns,
        value);
  }
}
