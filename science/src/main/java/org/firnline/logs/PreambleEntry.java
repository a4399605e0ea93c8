package org.firnline.logs;

import java.util.Objects;

/**
 * A line before the table.
 *
 * @param line line of the file, from 1
 * @param key what the line is about; the whole line if it has no separator
 * @param value what it says, empty if it has no separator
 */
public record PreambleEntry(long line, String key, String value) {
  public PreambleEntry {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(value, "value");
  }
}
