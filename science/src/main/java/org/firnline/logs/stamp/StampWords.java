package org.firnline.logs.stamp;

import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.PlainWords;

/** Words inside stamps: months in several languages, halves of the day, zones, weekdays. */
final class StampWords {
  private static final Set<String> FILLERS =
      Set.of(
          "t",
          "h",
          "d",
          "of",
          "m",
          "mon",
          "tue",
          "wed",
          "thu",
          "fri",
          "sat",
          "sun",
          "mo",
          "di",
          "mi",
          "do",
          "fr",
          "sa",
          "so",
          "lun",
          "mer",
          "jeu",
          "ven",
          "sam",
          "dim",
          "mie",
          "jue",
          "vie",
          "sab",
          "dom",
          "gio",
          "monday",
          "tuesday",
          "wednesday",
          "thursday",
          "friday",
          "saturday",
          "sunday",
          "uhr");

  private final Map<String, Word> words = new HashMap<>();

  /** What a word does in a stamp. */
  enum Kind {
    FILLER,
    MORNING,
    AFTERNOON,
    MONTH,
    ZONE,
    UNKNOWN
  }

  /**
   * A word's meaning.
   *
   * @param kind what it does
   * @param number month from 1, or offset from UTC in minutes; else 0
   */
  record Word(Kind kind, int number) {
    Word {
      Objects.requireNonNull(kind, "kind");
    }
  }

  StampWords() {
    for (List<String> row : CellWords.rows(StampWords.class, "zones.csv")) {
      ZoneId zone = ZoneId.of(row.get(1));
      int seconds = zone.getRules().getOffset(Instant.EPOCH).getTotalSeconds();
      words.put(row.get(0), new Word(Kind.ZONE, seconds / 60));
    }
    FILLERS.forEach(word -> words.put(word, new Word(Kind.FILLER, 0)));
    for (List<String> row : CellWords.rows(StampWords.class, "months.csv")) {
      words.put(row.get(0), new Word(Kind.MONTH, Integer.parseInt(row.get(1))));
    }
    words.put("am", new Word(Kind.MORNING, 0));
    words.put("a", new Word(Kind.MORNING, 0));
    words.put("pm", new Word(Kind.AFTERNOON, 0));
    words.put("p", new Word(Kind.AFTERNOON, 0));
  }

  Word read(String written) {
    return words.getOrDefault(PlainWords.fold(written), new Word(Kind.UNKNOWN, 0));
  }
}
