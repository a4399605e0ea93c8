package org.firnline.app.library.icerun;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A small hand-written table as text: a file with commas, semicolons or tabs, or cells pasted from
 * a spreadsheet.
 *
 * @param rows cells of each line, stripped; blank lines are empty lists
 */
record SheetCells(List<List<String>> rows) {
  private static final char[] MARKS = {'\t', ';', ','};

  SheetCells {
    rows = List.copyOf(rows);
  }

  /** Splits a text at the first of tab, semicolon and comma that it has. */
  static SheetCells of(String text) {
    char mark = ',';
    for (char candidate : MARKS) {
      if (text.indexOf(candidate) >= 0) {
        mark = candidate;
        break;
      }
    }
    char delimiter = mark;
    Stream<List<String>> rows = text.lines().map(line -> cells(line, delimiter));
    return new SheetCells(rows.toList());
  }

  private static List<String> cells(String line, char mark) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char letter = line.charAt(i);
      if (letter == '"') {
        quoted = !quoted;
      } else if (letter == mark && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(letter);
      }
    }
    cells.add(cell.toString().strip());
    while (!cells.isEmpty() && cells.get(cells.size() - 1).isEmpty()) {
      cells.remove(cells.size() - 1);
    }
    return List.copyOf(cells);
  }
}
