package org.firnline.logs.form;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.text.ByteSource;
import org.firnline.logs.text.EncodingVerdict;
import org.firnline.logs.text.Lines;
import org.firnline.logs.text.RowStream;

/**
 * A log of JSON objects becomes a wide table, in two passes and little memory. A member with a
 * value and a unit inside, such as {@code "p":{"v":8.1,"u":"Pa"}}, becomes one column with that
 * unit. The row of an object stands one line below the line the object starts in.
 */
public final class JsonLines {
  private static final List<String> VALUES = List.of("v", "value", "val");
  private static final List<String> UNITS = List.of("u", "unit", "units");
  private static final int MOST_COLUMNS = 4_096;

  private final ByteSource source;
  private final EncodingVerdict encoding;
  private final boolean perLine;
  private final Map<String, String> units = new LinkedHashMap<>();
  private final Map<String, Integer> columns = new LinkedHashMap<>();

  private JsonLines(ByteSource source, EncodingVerdict encoding, boolean perLine) {
    this.source = source;
    this.encoding = encoding;
    this.perLine = perLine;
  }

  /** Whether a line holds one object of such a log. */
  public static boolean isObject(String text) {
    return JsonObject.read(JsonRecords.bare(text)).isPresent();
  }

  /** Whether a file that begins so holds objects spread over lines. */
  public static boolean beginsDocument(String text) {
    String bare = text.strip().replaceFirst("^\uFEFF", "");
    return bare.matches("(?s)[\\[{]\\s*|\\[\\s*\\{.*|\\{\\s*\"[^\"]*\"\\s*:.*");
  }

  /**
   * A file of objects as a wide table.
   *
   * @param perLine whether each line holds one object
   */
  public static ByteSource table(ByteSource source, EncodingVerdict encoding, boolean perLine)
      throws IOException {
    JsonLines json = new JsonLines(source, encoding, perLine);
    json.survey();
    List<String> names = List.copyOf(json.columns.keySet());
    return () -> new RowStream(json.new Rows(names, json.records()));
  }

  private JsonRecords records() throws IOException {
    return new JsonRecords(Lines.open(source, encoding), perLine);
  }

  private void survey() throws IOException {
    try (JsonRecords records = records()) {
      for (Optional<JsonRecords.Found> found = records.next();
          found.isPresent();
          found = records.next()) {
        JsonObject.read(found.get().text()).ifPresent(members -> joined(members, true));
      }
    }
  }

  private Map<String, String> joined(Map<String, String> members, boolean learn) {
    Map<String, String> row = new LinkedHashMap<>();
    members.forEach(
        (name, value) -> {
          int cut = name.lastIndexOf('.');
          String last = name.substring(cut + 1);
          String stem = cut < 0 ? name : name.substring(0, cut);
          if (cut > 0 && UNITS.contains(last)) {
            if (learn) {
              units.putIfAbsent(stem, value);
            }
          } else {
            String column = cut > 0 && VALUES.contains(last) ? stem : name;
            if (learn && columns.size() < MOST_COLUMNS) {
              columns.putIfAbsent(column, columns.size());
            }
            row.put(column, value);
          }
        });
    return row;
  }

  private final class Rows implements RowStream.Rows {
    private final List<String> names;
    private final JsonRecords records;
    private long line;
    private final Deque<JsonRecords.Found> due = new ArrayDeque<>();
    private boolean headed;

    Rows(List<String> names, JsonRecords records) {
      this.names = names;
      this.records = records;
    }

    @Override
    public Optional<List<String>> next() throws IOException {
      if (due.isEmpty()) {
        records.next().ifPresent(due::add);
      }
      // The heading stands right above the first object's row, which is one line lower than it.
      long wanted = due.isEmpty() ? 0 : due.getFirst().line() + (headed ? 1 : 0);
      if (line + 1 < wanted) {
        line++;
        return Optional.of(List.of());
      }
      line++;
      if (!headed) {
        headed = true;
        return Optional.of(
            names.stream()
                .map(name -> units.containsKey(name) ? name + " [" + units.get(name) + "]" : name)
                .toList());
      }
      return Optional.ofNullable(due.poll()).map(found -> cells(found.text()));
    }

    /** The cells of an object; a text that is none stays whole, to be rejected by its line. */
    private List<String> cells(String text) {
      Optional<Map<String, String>> members = JsonObject.read(text);
      if (members.isEmpty()) {
        return List.of("no object: " + text.substring(0, Math.min(40, text.length())));
      }
      Map<String, String> row = joined(members.get(), false);
      List<String> cells = new ArrayList<>(names.size());
      names.forEach(name -> cells.add(row.getOrDefault(name, "")));
      return cells;
    }

    @Override
    public void close() throws IOException {
      records.close();
    }
  }
}
