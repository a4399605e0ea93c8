package org.firnline.logs.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.logs.text.RowStream;

/** The rows of one sheet of an .ods spreadsheet, one after the other. */
final class OpenDocumentRows implements RowStream.Rows {
  private static final int MOST_COLUMNS = 4_096;

  /** Sheets say that their last row repeats a million times; a log's row never does. */
  private static final int MOST_REPEATS = 10_000;

  private final PlainXml xml;
  private List<String> repeated = List.of();
  private int repeats;

  /**
   * The rows of a sheet.
   *
   * @param in the file that holds all sheets
   * @param sheet number of the sheet, from 0
   */
  OpenDocumentRows(InputStream in, int sheet) throws IOException {
    this.xml = new PlainXml(in);
    int seen = 0;
    while (seen <= sheet && xml.advance()) {
      seen += xml.starts("table") ? 1 : 0;
    }
  }

  @Override
  public Optional<List<String>> next() throws IOException {
    if (repeats > 0) {
      repeats--;
      return Optional.of(repeated);
    }
    while (xml.advance() && !xml.ends("table")) {
      if (xml.starts("table-row")) {
        int times = xml.number("number-rows-repeated", 1);
        repeated = readRow();
        repeats = Math.min(MOST_REPEATS, Math.max(1, times)) - 1;
        return Optional.of(repeated);
      }
    }
    return Optional.empty();
  }

  private List<String> readRow() throws IOException {
    List<String> found = new ArrayList<>();
    int emptyDue = 0;
    while (xml.advance() && !xml.ends("table-row")) {
      boolean covered = xml.starts("covered-table-cell");
      if (!covered && !xml.starts("table-cell")) {
        continue;
      }
      int times = Math.max(1, xml.number("number-columns-repeated", 1));
      String text = readCell(covered ? "covered-table-cell" : "table-cell");
      if (text.isEmpty()) {
        emptyDue = (int) Math.min(MOST_COLUMNS + 1L, (long) emptyDue + times);
        continue;
      }
      if ((long) found.size() + emptyDue + times > MOST_COLUMNS) {
        throw new IOException("the sheet has more than " + MOST_COLUMNS + " columns");
      }
      for (; emptyDue > 0; emptyDue--) {
        found.add("");
      }
      for (int i = 0; i < times; i++) {
        found.add(text);
      }
    }
    return found;
  }

  /** The stored value of a cell, its shown text if it is no number or time. */
  private String readCell(String element) throws IOException {
    String type = xml.attribute("value-type").orElse("");
    String value = xml.attribute("date-value").or(() -> xml.attribute("time-value")).orElse("");
    String number = xml.attribute("value").orElse("");
    StringBuilder shown = new StringBuilder();
    boolean inside = false;
    while (xml.advance() && !xml.ends(element)) {
      if (xml.starts("p")) {
        shown.append(shown.isEmpty() ? "" : " ");
        inside = true;
      } else if (xml.ends("p")) {
        inside = false;
      } else if (inside) {
        xml.appendText(shown);
      }
    }
    return switch (type.toLowerCase(Locale.ROOT)) {
      case "float", "currency" -> number;
      case "percentage" -> shown.toString();
      case "date" -> value.replace('T', ' ');
      case "time" -> clock(value).orElseGet(shown::toString);
      default -> shown.toString();
    };
  }

  /** "PT10H30M05S" as 10:30:05; hours may pass a day. */
  private static Optional<String> clock(String duration) {
    try {
      Duration time = Duration.parse(duration);
      String clock =
          String.format(
              Locale.ROOT,
              "%02d:%02d:%02d",
              time.toHours(),
              time.toMinutesPart(),
              time.toSecondsPart());
      boolean whole = time.toMillisPart() == 0;
      return Optional.of(
          whole ? clock : clock + String.format(Locale.ROOT, ".%03d", time.toMillisPart()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  @Override
  public void close() throws IOException {
    xml.close();
  }
}
