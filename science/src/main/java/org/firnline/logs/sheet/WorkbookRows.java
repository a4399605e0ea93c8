package org.firnline.logs.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.text.RowStream;

/** The rows of one sheet of an .xlsx workbook, one after the other. */
final class WorkbookRows implements RowStream.Rows {
  private static final int MOST_COLUMNS = 4_096;

  /** Rows that a sheet leaves out are empty; a line of theirs each keeps the numbers in step. */
  private static final int MOST_LEFT_OUT = 10_000;

  private final PlainXml xml;
  private final SheetCells cells;
  private final StringBuilder value = new StringBuilder();
  private int row;
  private int emptyDue;
  private List<String> pending = List.of();

  WorkbookRows(InputStream in, SheetCells cells) throws IOException {
    this.xml = new PlainXml(in);
    this.cells = cells;
  }

  @Override
  public Optional<List<String>> next() throws IOException {
    if (emptyDue > 0) {
      emptyDue--;
      return Optional.of(List.of());
    }
    if (!pending.isEmpty()) {
      List<String> found = pending;
      pending = List.of();
      return Optional.of(found);
    }
    while (xml.advance()) {
      if (xml.starts("row")) {
        int number = xml.number("r", row + 1);
        emptyDue = Math.min(MOST_LEFT_OUT, Math.max(0, number - row - 1));
        row = Math.max(row + 1, number);
        List<String> found = readRow();
        if (emptyDue == 0) {
          return Optional.of(found);
        }
        pending = found.isEmpty() ? List.of("") : found;
        emptyDue--;
        return Optional.of(List.of());
      }
    }
    return Optional.empty();
  }

  private List<String> readRow() throws IOException {
    List<String> found = new ArrayList<>();
    while (xml.advance() && !xml.ends("row")) {
      if (xml.starts("c")) {
        int column = column(xml.attribute("r").orElse(""), found.size());
        String type = xml.attribute("t").orElse("");
        int style = xml.number("s", 0);
        String text = cells.text(type, style, readValue());
        if (column >= MOST_COLUMNS) {
          throw new IOException("the sheet has more than " + MOST_COLUMNS + " columns");
        }
        while (found.size() < column) {
          found.add("");
        }
        found.add(text);
      }
    }
    return found;
  }

  /** The stored value of a cell; the formula beside it is passed over. */
  private String readValue() throws IOException {
    value.setLength(0);
    boolean inside = false;
    while (xml.advance() && !xml.ends("c")) {
      if (xml.starts("v") || xml.starts("t")) {
        inside = true;
      } else if (xml.ends("v") || xml.ends("t")) {
        inside = false;
      } else if (inside) {
        xml.appendText(value);
      }
    }
    return value.toString();
  }

  /** The column of a reference such as "AB12", from 0. */
  private static int column(String reference, int next) {
    int column = 0;
    int letters = 0;
    while (letters < reference.length()
        && letters < 4
        && reference.charAt(letters) >= 'A'
        && reference.charAt(letters) <= 'Z') {
      column = column * 26 + reference.charAt(letters) - 'A' + 1;
      letters++;
    }
    return letters == 0 ? next : Math.max(next, column - 1);
  }

  @Override
  public void close() throws IOException {
    xml.close();
  }
}
