package org.firnline.logs;

import java.time.Instant;
import java.util.Objects;

/**
 * Something the log says in words at a moment.
 *
 * @param at when, UTC
 * @param line line of the file, from 1
 * @param kind what sort of thing it is
 * @param text the words of the file, or of the reader for clock steps and restarts
 */
public record Marker(Instant at, long line, Kind kind, String text) {

  /** What sort of marker it is. */
  public enum Kind {
    /** The log's recipe moved to another step. */
    STEP("step"),
    /** The dryer's state word changed. */
    STATE("state"),
    EVENT("event"),
    ALARM("alarm"),
    COMMENT("comment"),
    /** The logger started again: a repeated header, a counter reset. */
    RESTART("restart"),
    /** The logger's clock was set. */
    CLOCK_CHANGE("clock change");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    /** The word shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public Marker {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(text, "text");
  }
}
