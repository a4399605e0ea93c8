package org.firnline.logs.table;

import java.util.List;
import java.util.Objects;

/**
 * Everything the body of a table holds.
 *
 * @param columns one builder per column
 * @param time the time cells
 * @param lines line number of each kept row
 * @param ledger what became of every line
 * @param marks lines that say something in words
 * @param unfinishedLine number of a last line without a line end that was left for later; 0 if none
 * @param nextTableLine line of the heading of another table that begins below; 0 if none
 */
public record TableContents(
    List<ColumnBuilder> columns,
    TimeCells time,
    LineNumbers lines,
    RowLedger ledger,
    List<LineMark> marks,
    long unfinishedLine,
    long nextTableLine) {
  public TableContents {
    columns = List.copyOf(columns);
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(lines, "lines");
    Objects.requireNonNull(ledger, "ledger");
    marks = List.copyOf(marks);
  }
}
