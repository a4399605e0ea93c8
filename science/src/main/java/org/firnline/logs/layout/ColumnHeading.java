package org.firnline.logs.layout;

import java.util.Objects;
import java.util.Optional;

/**
 * What the header says about a column.
 *
 * @param header the whole heading as written, rows joined
 * @param name the heading without its unit
 * @param description further words about the column from elsewhere in the file, empty if none
 * @param unit its unit; empty if none is written or it is not known
 * @param scale scaling written without a unit, such as "x10": 0.1; else 1
 */
public record ColumnHeading(
    String header, String name, String description, Optional<ColumnUnit> unit, double scale) {
  public ColumnHeading {
    Objects.requireNonNull(header, "header");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(description, "description");
    Objects.requireNonNull(unit, "unit");
  }

  /** The same heading with a unit from elsewhere. */
  public ColumnHeading withUnit(ColumnUnit value) {
    return new ColumnHeading(header, name, description, Optional.of(value), scale);
  }

  /** The same heading with further words. */
  public ColumnHeading withDescription(String value) {
    return new ColumnHeading(header, name, value, unit, scale);
  }
}
