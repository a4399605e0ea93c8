package org.firnline.app.words;

import java.util.ArrayList;
import java.util.List;

/** Columns and hanging paragraphs for a terminal. */
public final class TextTable {
  private static final String BETWEEN = "  ";

  private TextTable() {}

  /** Rows with their columns aligned to the left; the last column is not padded. */
  public static List<String> of(List<List<String>> rows) {
    List<Integer> widths = new ArrayList<>();
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        if (i == widths.size()) {
          widths.add(0);
        }
        widths.set(i, Math.max(widths.get(i), row.get(i).length()));
      }
    }
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private static String line(List<String> row, List<Integer> widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < row.size(); i++) {
      line.append(row.get(i));
      if (i < row.size() - 1) {
        line.append(" ".repeat(widths.get(i) - row.get(i).length())).append(BETWEEN);
      }
    }
    return line.toString();
  }

  /**
   * A paragraph whose first line starts with a head and whose further lines are indented.
   *
   * @param indent where the text starts, in characters
   * @param width longest line
   */
  public static List<String> hanging(String head, String text, int indent, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(head);
    line.append(" ".repeat(Math.max(0, indent - head.length())));
    boolean empty = true;
    for (String word : text.split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(indent));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
