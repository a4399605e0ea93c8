package org.firnline.logs.layout;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which columns hold the time, and in which form.
 *
 * @param form what they hold
 * @param columns their numbers from 0: one, or date and clock; empty if there is none
 * @param unit unit of a time in figures; empty if none is written
 * @param saysElapsed whether the heading says that it counts from the start
 */
public record TimePlan(
    Form form, List<Integer> columns, Optional<ColumnUnit> unit, boolean saysElapsed) {

  /** What the time columns hold. */
  public enum Form {
    /** Date and clock time in one cell. */
    STAMP,
    /** Date in one column, clock time in another. */
    DATE_AND_CLOCK,
    /** A clock time or an elapsed h:mm:ss without a date. */
    CLOCK,
    /** A number: an epoch, a spreadsheet serial, an elapsed time. */
    FIGURES,
    /** Nothing but the order of the rows. */
    NONE
  }

  public TimePlan {
    Objects.requireNonNull(form, "form");
    columns = List.copyOf(columns);
    Objects.requireNonNull(unit, "unit");
  }

  /** Whether a column is one of the time columns. */
  public boolean uses(int column) {
    return columns.contains(column);
  }
}
