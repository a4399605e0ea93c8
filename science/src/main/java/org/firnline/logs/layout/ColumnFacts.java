package org.firnline.logs.layout;

import java.util.Objects;
import java.util.Optional;

/**
 * What is known about a column before its role is decided.
 *
 * @param heading its heading
 * @param isText whether it holds text
 * @param values what its values look like, as written; empty for text and empty columns
 */
public record ColumnFacts(ColumnHeading heading, boolean isText, Optional<ValueShape> values) {
  public ColumnFacts {
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(values, "values");
  }
}
