package org.firnline.evidence;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A small table of published values that ships with the program: comma-separated, UTF-8, one line
 * for each row, column names in the first line, quotes around fields that hold a comma (RFC 4180).
 */
public final class ResourceTable {

  private ResourceTable() {}

  /**
   * One line of a table.
   *
   * @param fields text by column name
   */
  public record Row(Map<String, String> fields) {

    public Row {
      fields = Map.copyOf(fields);
    }

    /** The text in {@code column}, blank where the table leaves it out. */
    public String text(String column) {
      String text = fields.get(column);
      if (text == null) {
        throw new IllegalArgumentException("no column " + column + " in row " + fields);
      }
      return text;
    }

    /** The number in {@code column}, in the unit that its name ends in. */
    public double number(String column) {
      return Double.parseDouble(text(column));
    }

    /** The origin in the columns {@code source} and {@code status}. */
    public Source source() {
      return source("");
    }

    /** The origin in the columns {@code source} and {@code status} after {@code prefix}. */
    public Source source(String prefix) {
      String status = text(prefix + "status").toUpperCase(Locale.ROOT).replace(' ', '_');
      return new Source(text(prefix + "source"), Source.Status.valueOf(status));
    }
  }

  /**
   * The rows of a table beside a class.
   *
   * @param near a class in the package that holds the table
   * @param name file name of the table
   */
  public static List<Row> read(Class<?> near, String name) {
    InputStream stream = near.getResourceAsStream(name);
    if (stream == null) {
      throw new IllegalStateException("table " + name + " is missing beside " + near.getName());
    }
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return rows(lines.lines().filter(line -> !line.isBlank()).toList(), name);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Row> rows(List<String> lines, String name) {
    List<String> columns = fields(lines.get(0));
    List<Row> rows = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      List<String> fields = fields(line);
      if (fields.size() != columns.size()) {
        throw new IllegalStateException(
            name + ": " + fields.size() + " fields for " + columns.size() + " columns: " + line);
      }
      Map<String, String> row = new TreeMap<>();
      for (int column = 0; column < columns.size(); column++) {
        row.put(columns.get(column), fields.get(column));
      }
      rows.add(new Row(row));
    }
    return List.copyOf(rows);
  }

  private static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int at = 0; at < line.length(); at++) {
      char c = line.charAt(at);
      boolean doubled = quoted && at + 1 < line.length() && line.charAt(at + 1) == '"';
      if (c == '"' && doubled) {
        field.append(c);
        at++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        fields.add(field.toString());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    fields.add(field.toString());
    return fields;
  }
}
