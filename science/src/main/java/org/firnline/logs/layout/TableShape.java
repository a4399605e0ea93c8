package org.firnline.logs.layout;

import java.util.List;
import java.util.Objects;

/**
 * Where the table stands and what its columns hold.
 *
 * @param dialect delimiter and decimal mark
 * @param columns number of columns
 * @param usualCells number of cells most lines have; fewer than columns if trailing ones are left
 *     out
 * @param headerLines sample lines that make up the names, top first; empty if there is none
 * @param unitLine whether the last header line holds only units
 * @param bodyStart number of the first line of the body, from 1
 * @param preamble sample lines above the header
 * @param kinds what each column mostly holds
 * @param firstColumnGrows whether the figures of the first column grow from line to line
 */
public record TableShape(
    Dialect dialect,
    int columns,
    int usualCells,
    List<SampleLine> headerLines,
    boolean unitLine,
    long bodyStart,
    List<SampleLine> preamble,
    List<ColumnKind> kinds,
    boolean firstColumnGrows) {
  public TableShape {
    Objects.requireNonNull(dialect, "dialect");
    headerLines = List.copyOf(headerLines);
    preamble = List.copyOf(preamble);
    kinds = List.copyOf(kinds);
  }

  /** The same table where a row may end early because its last cells are empty, as in sheets. */
  public TableShape ragged() {
    return new TableShape(
        dialect, columns, 0, headerLines, unitLine, bodyStart, preamble, kinds, firstColumnGrows);
  }
}
