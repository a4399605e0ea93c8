package org.firnline.logs.table;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.PlainWords;

/** Words that tell what sort of line stands there when it is no sample; a shipped table. */
final class RowWords {
  private final Map<String, LineMark.Kind> kinds = new HashMap<>();

  RowWords() {
    for (List<String> row : CellWords.rows(RowWords.class, "rowwords.csv")) {
      kinds.put(row.get(0), LineMark.Kind.valueOf(row.get(1)));
    }
  }

  /** The kind its first telling word gives a text, or another if no word tells. */
  LineMark.Kind kindOf(String text, LineMark.Kind otherwise) {
    for (String word : PlainWords.split(text)) {
      LineMark.Kind kind = kinds.get(word);
      if (kind != null) {
        return kind;
      }
    }
    return otherwise;
  }

  /** Whether a row starts as a line of statistics or a footer does. */
  boolean isStatistics(String firstCell) {
    List<String> words = PlainWords.split(firstCell);
    return !words.isEmpty() && kinds.get(words.get(0)) == LineMark.Kind.STATISTICS;
  }
}
