package org.firnline.logs;

import java.util.Objects;
import org.firnline.logs.layout.ColumnHeading;
import org.firnline.logs.table.ColumnBuilder;

/**
 * A column with its heading and cells.
 *
 * @param index number of the column, from 0
 * @param heading what the header says
 * @param cells what the body holds
 * @param isStamp whether it holds a second account of the time
 */
record ColumnSource(int index, ColumnHeading heading, ColumnBuilder cells, boolean isStamp) {
  ColumnSource {
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(cells, "cells");
  }

  /** What a choice about this column is filed under. */
  String key() {
    return heading.header().isEmpty() ? "#" + (index + 1) : heading.header();
  }
}
