package org.firnline.logs.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A long table, one value a line under a tag, becomes a wide one: lines are gathered into a row
 * until a tag comes again. A value whose quality is not the usual one is bad.
 */
public final class LongTable {
  private static final List<String> GOOD = List.of("0", "good", "ok", "g", "192", "valid", "");

  private final Map<String, String> units = new LinkedHashMap<>();
  private final Map<String, Integer> qualities = new HashMap<>();
  private final List<Line> lines = new ArrayList<>();

  /**
   * One line of a long table.
   *
   * @param stamp its time as written, date and clock joined
   * @param tag what it is about
   * @param value as written
   * @param unit as written, empty if none
   * @param quality as written, empty if none
   */
  public record Line(String stamp, String tag, String value, String unit, String quality) {
    public Line {
      Objects.requireNonNull(stamp, "stamp");
      Objects.requireNonNull(tag, "tag");
      Objects.requireNonNull(value, "value");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(quality, "quality");
    }
  }

  /** Takes the next line. */
  public void take(Line line) {
    lines.add(line);
    qualities.merge(line.quality().toLowerCase(java.util.Locale.ROOT), 1, Integer::sum);
    if (!line.unit().isEmpty()) {
      units.putIfAbsent(line.tag(), line.unit());
    } else {
      units.putIfAbsent(line.tag(), "");
    }
  }

  /** The wide table. */
  public byte[] table() {
    List<String> tags = List.copyOf(units.keySet());
    WideTable table = new WideTable();
    List<String> header = new ArrayList<>(List.of("time"));
    units.forEach((tag, unit) -> header.add(unit.isEmpty() ? tag : tag + " [" + unit + "]"));
    table.row(header);
    Map<String, String> row = new HashMap<>();
    String stamp = "";
    for (Line line : lines) {
      if (row.containsKey(line.tag())) {
        write(table, stamp, tags, row);
        row.clear();
      }
      stamp = row.isEmpty() ? line.stamp() : stamp;
      row.put(line.tag(), isGood(line) ? line.value() : "bad");
    }
    if (!row.isEmpty()) {
      write(table, stamp, tags, row);
    }
    return table.bytes();
  }

  private boolean isGood(Line line) {
    String quality = line.quality().toLowerCase(java.util.Locale.ROOT);
    boolean anyUsual = qualities.keySet().stream().anyMatch(q -> !q.isEmpty() && GOOD.contains(q));
    if (anyUsual) {
      return GOOD.contains(quality);
    }
    int most = qualities.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return qualities.getOrDefault(quality, 0) == most;
  }

  private static void write(
      WideTable table, String stamp, List<String> tags, Map<String, String> row) {
    List<String> cells = new ArrayList<>(List.of(stamp));
    tags.forEach(tag -> cells.add(row.getOrDefault(tag, "")));
    table.row(cells);
  }
}
