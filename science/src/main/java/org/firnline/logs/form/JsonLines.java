package org.firnline.logs.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A log of one JSON object per line becomes a wide table. A member with a value and a unit inside,
 * such as {@code "p":{"v":8.1,"u":"Pa"}}, becomes one column with that unit.
 */
public final class JsonLines {
  private static final List<String> VALUES = List.of("v", "value", "val");
  private static final List<String> UNITS = List.of("u", "unit", "units");

  private final Map<String, String> units = new LinkedHashMap<>();
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private final List<Map<String, String>> rows = new ArrayList<>();
  private final List<Long> unreadable = new ArrayList<>();
  private long line;

  /** Whether a line could be one of such a log. */
  public static boolean isObject(String text) {
    return JsonObject.read(bare(text)).isPresent();
  }

  /** Lines of an array of objects carry brackets and commas around the objects. */
  private static String bare(String text) {
    String bare = text.strip().replaceFirst("^\uFEFF", "");
    bare = bare.startsWith("[") ? bare.substring(1).strip() : bare;
    while (bare.endsWith(",") || (bare.endsWith("]") && !bare.startsWith("["))) {
      bare = bare.substring(0, bare.length() - 1).strip();
    }
    return bare;
  }

  /** Takes the next line of the file. */
  public void take(String text) {
    line++;
    String bare = bare(text);
    if (bare.isEmpty()) {
      return;
    }
    Optional<Map<String, String>> members = JsonObject.read(bare);
    if (members.isEmpty()) {
      unreadable.add(line);
      return;
    }
    rows.add(joined(members.get()));
  }

  private Map<String, String> joined(Map<String, String> members) {
    Map<String, String> row = new LinkedHashMap<>();
    members.forEach(
        (name, value) -> {
          int cut = name.lastIndexOf('.');
          String last = name.substring(cut + 1);
          String stem = cut < 0 ? name : name.substring(0, cut);
          if (cut > 0 && UNITS.contains(last)) {
            units.put(stem, value);
          } else {
            String column = cut > 0 && VALUES.contains(last) ? stem : name;
            columns.putIfAbsent(column, columns.size());
            row.put(column, value);
          }
        });
    return row;
  }

  /** Lines that hold no object, from 1. */
  public List<Long> unreadable() {
    return List.copyOf(unreadable);
  }

  /** The wide table. */
  public byte[] table() {
    WideTable table = new WideTable();
    List<String> names = List.copyOf(columns.keySet());
    table.row(
        names.stream()
            .map(name -> units.containsKey(name) ? name + " [" + units.get(name) + "]" : name)
            .toList());
    for (Map<String, String> row : rows) {
      table.row(names.stream().map(name -> row.getOrDefault(name, "")).toList());
    }
    return table.bytes();
  }
}
