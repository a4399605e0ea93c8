package org.firnline.logs.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.PlainWords;

/**
 * Which columns of a long table hold what.
 *
 * @param tag column of the tag, from 0
 * @param value column of the value
 * @param unit column of the unit; -1 if none
 * @param quality column of the quality; -1 if none
 */
public record LongShape(int tag, int value, int unit, int quality) {

  /** The parts of a long table by its headings; empty if it is none. */
  public static Optional<LongShape> of(TableShape shape, List<ColumnHeading> headings) {
    Map<String, String> words = new HashMap<>();
    for (List<String> row : CellWords.rows(LongShape.class, "longwords.csv")) {
      words.put(row.get(0), row.get(1));
    }
    Map<String, Integer> parts = new HashMap<>();
    for (int i = 0; i < headings.size(); i++) {
      String part = words.get(PlainWords.fold(headings.get(i).header().strip()));
      if (part != null) {
        parts.putIfAbsent(part, i);
      }
    }
    int tag = parts.getOrDefault("TAG", -1);
    int value = parts.getOrDefault("VALUE", -1);
    boolean isLong = tag >= 0 && value >= 0 && shape.kinds().get(tag) == ColumnKind.TEXT;
    return isLong
        ? Optional.of(
            new LongShape(
                tag, value, parts.getOrDefault("UNIT", -1), parts.getOrDefault("QUALITY", -1)))
        : Optional.empty();
  }
}
