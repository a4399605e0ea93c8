package org.firnline.logs.layout;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.PlainWords;

/** Words of column headings in several languages and what they are about; a shipped table. */
public final class Vocabulary {
  private static final int SHORTEST_PART = 5;

  private final Map<String, Map<Topic, Integer>> words = new HashMap<>();

  /** Reads the shipped table. */
  public Vocabulary() {
    for (List<String> row : CellWords.rows(Vocabulary.class, "topics.csv")) {
      words
          .computeIfAbsent(row.get(0), word -> new EnumMap<>(Topic.class))
          .put(Topic.valueOf(row.get(1)), Integer.valueOf(row.get(2)));
    }
  }

  /** What a text is about: each topic with the strength of its strongest word. */
  public Map<Topic, Integer> topicsOf(String text) {
    Map<Topic, Integer> topics = new EnumMap<>(Topic.class);
    for (String word : PlainWords.split(text)) {
      Map<Topic, Integer> found = words.containsKey(word) ? words.get(word) : compound(word);
      found.forEach((topic, strength) -> topics.merge(topic, strength, Math::max));
    }
    return topics;
  }

  /** Languages that write words together: "Produkttemperatur", "Shelftemp". */
  private Map<Topic, Integer> compound(String word) {
    Map<Topic, Integer> topics = new EnumMap<>(Topic.class);
    if (word.length() < SHORTEST_PART + 1) {
      return topics;
    }
    words.forEach(
        (known, about) -> {
          if ((known.length() >= SHORTEST_PART && word.contains(known))
              || (known.equals("soll") && word.endsWith(known))
              || (known.equals("eis") && word.startsWith(known))) {
            about.forEach((topic, strength) -> topics.merge(topic, strength, Math::max));
          }
        });
    return topics;
  }
}
