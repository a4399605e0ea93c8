package org.firnline.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What was settled about files of one source, to be used for the next one. A hint only: where the
 * header has changed, choices about columns are left aside and the changes are told.
 *
 * @param header the column headings the choices were made for
 * @param choices the choices
 */
public record ReadingProfile(List<String> header, ReadingChoices choices) {
  public ReadingProfile {
    header = List.copyOf(header);
    Objects.requireNonNull(choices, "choices");
  }

  /** How another header differs from the one the choices were made for; empty if it does not. */
  public List<String> changes(List<String> other) {
    List<String> changes = new ArrayList<>();
    for (String column : header) {
      if (!other.contains(column)) {
        changes.add("\"" + column + "\" is gone");
      }
    }
    for (String column : other) {
      if (!header.contains(column)) {
        changes.add("\"" + column + "\" is new");
      }
    }
    if (changes.isEmpty() && !header.equals(other)) {
      changes.add("the columns stand in another order");
    }
    return changes;
  }

  /** The choices that still hold when the header has changed: all but those about columns. */
  ReadingChoices withoutColumns() {
    return choices.withColumns(Map.of());
  }
}
