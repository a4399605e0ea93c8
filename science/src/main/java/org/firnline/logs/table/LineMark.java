package org.firnline.logs.table;

import java.util.Objects;

/**
 * A line of a file that says something in words.
 *
 * @param row number of rows kept before it: the mark belongs at the time of that row, or of the
 *     last one if there is none after it
 * @param line line of the file, from 1
 * @param kind what sort of mark it is
 * @param text its words
 */
public record LineMark(int row, long line, Kind kind, String text) {

  /** What sort of mark a line is. */
  public enum Kind {
    STEP,
    EVENT,
    ALARM,
    COMMENT,
    RESTART,
    STATISTICS
  }

  /** The kind a remark is by its words: a step, an alarm, an event, else a comment. */
  public static Kind kindOf(String text) {
    Kind kind = new RowWords().kindOf(text, Kind.COMMENT);
    return kind == Kind.STATISTICS ? Kind.COMMENT : kind;
  }

  public LineMark {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(text, "text");
  }
}
