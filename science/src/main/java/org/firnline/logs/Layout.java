package org.firnline.logs;

import java.util.List;
import java.util.Objects;

/**
 * How a file is laid out.
 *
 * @param form kind of file: "delimited", "long", "JSON lines"
 * @param encoding character set, such as "UTF-8" or "windows-1252"
 * @param delimiter field separator in words for invisible ones: ",", ";", "tab"; empty if none
 * @param decimalMark "." or ","; empty if the file holds no fractions
 * @param timeRule how times were read, in words
 * @param headerLines lines that make up the column names, from 1; empty if the file has none
 * @param header the column names as the file writes them, units included, one per column
 */
public record Layout(
    String form,
    String encoding,
    String delimiter,
    String decimalMark,
    String timeRule,
    List<Long> headerLines,
    List<String> header) {

  public Layout {
    Objects.requireNonNull(form, "form");
    Objects.requireNonNull(encoding, "encoding");
    Objects.requireNonNull(delimiter, "delimiter");
    Objects.requireNonNull(decimalMark, "decimalMark");
    Objects.requireNonNull(timeRule, "timeRule");
    headerLines = List.copyOf(headerLines);
    header = List.copyOf(header);
  }
}
