package org.firnline.logs.table;

import java.util.Objects;

/**
 * Why a run of lines was not simply taken.
 *
 * @param firstLine first line of the file, from 1
 * @param lastLine last line
 * @param rows how many rows between them are meant
 * @param fate what became of them
 * @param column the column concerned as the file writes it, empty if the whole row
 * @param reason why, in words
 */
public record RowNote(
    long firstLine, long lastLine, long rows, Fate fate, String column, String reason) {

  /** What became of a row. */
  public enum Fate {
    FLAGGED("flagged"),
    SET_ASIDE("set aside"),
    REJECTED("rejected");

    private final String label;

    Fate(String label) {
      this.label = label;
    }

    /** The words shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public RowNote {
    Objects.requireNonNull(fate, "fate");
    Objects.requireNonNull(column, "column");
    Objects.requireNonNull(reason, "reason");
  }
}
