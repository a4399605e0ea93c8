package org.firnline.logs.stamp;

import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.PlainWords;
import org.jspecify.annotations.Nullable;

/** The words that stand in time cells: months, zones, days of the week, halves of the day. */
final class StampWords {

  private static final Set<String> FILLERS = Set.of("t", "h", "d", "of");
  private static final Set<String> HALVES_OF_DAY = Set.of("am", "a", "pm", "p", "m");
  private static final Set<String> WEEKDAYS =
      Set.of(
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
          "sunday");

  private final Map<String, Integer> months = new HashMap<>();
  private final Map<String, String> zones = new HashMap<>();

  StampWords() {
    for (List<String> row : CellWords.rows(StampWords.class, "months.csv")) {
      months.put(row.get(0), Integer.valueOf(row.get(1)));
    }
    for (List<String> row : CellWords.rows(StampWords.class, "zones.csv")) {
      zones.put(row.get(0), row.get(1));
    }
  }

  /** Whether a folded word says nothing about the time. */
  boolean isSilent(String word) {
    return FILLERS.contains(word) || WEEKDAYS.contains(word);
  }

  /** Whether a folded word is the mark of a twelve-hour clock, or the second half of "a. m.". */
  boolean isHalfOfDay(String word) {
    return HALVES_OF_DAY.contains(word);
  }

  /** The number of a month, 0 if the folded word is none. */
  int month(String word) {
    return months.getOrDefault(word, 0);
  }

  /** The zone a written word stands for. */
  @Nullable String zoneOf(String written) {
    return zones.get(PlainWords.fold(written));
  }

  static int offsetMinutes(String zone) {
    return ZoneId.of(zone).getRules().getOffset(Instant.EPOCH).getTotalSeconds() / 60;
  }
}
