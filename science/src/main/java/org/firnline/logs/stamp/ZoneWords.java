package org.firnline.logs.stamp;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.PlainWords;

/** Zones as files name them: "MEZ", "UTC+1", "+01:00", "Europe/Berlin". */
public final class ZoneWords {
  private static final Pattern OFFSET =
      Pattern.compile("(?:utc|gmt)?\\s*([+-])\\s*(\\d{1,2})(?::?(\\d{2}))?(?:\\s*h)?");

  private final Map<String, String> words = new HashMap<>();

  /** Reads the shipped table. */
  public ZoneWords() {
    for (List<String> row : CellWords.rows(ZoneWords.class, "zones.csv")) {
      words.put(row.get(0), row.get(1));
    }
  }

  /** The zone a text names; empty if it names none. */
  public Optional<ZoneId> find(String text) {
    String folded = PlainWords.fold(text.strip()).replace('\u2212', '-');
    String word = words.get(folded);
    if (word != null) {
      return Optional.of(ZoneId.of(word));
    }
    Matcher offset = OFFSET.matcher(folded);
    if (offset.matches()) {
      String minutes = offset.group(3) == null ? "00" : offset.group(3);
      String hours = offset.group(2).length() == 1 ? "0" + offset.group(2) : offset.group(2);
      return zone(offset.group(1) + hours + ":" + minutes);
    }
    if (text.contains("/")) {
      return zone(text.strip());
    }
    String first = folded.split("[^a-z]+", 2)[0];
    String byFirst = words.get(first);
    return byFirst != null && folded.length() > first.length() && first.length() > 2
        ? Optional.of(ZoneId.of(byFirst))
        : Optional.empty();
  }

  private static Optional<ZoneId> zone(String id) {
    try {
      return Optional.of(ZoneId.of(id));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
