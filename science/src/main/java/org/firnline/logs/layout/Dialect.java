package org.firnline.logs.layout;

import java.util.Objects;
import org.firnline.logs.channel.Confidence;

/**
 * How cells and numbers are separated.
 *
 * @param delimiter cell separator
 * @param decimalMark '.' or ','
 * @param fractionsSeen whether any number has a fraction, so that the mark is more than a default
 * @param reason why, in words
 * @param confidence how sure
 */
public record Dialect(
    char delimiter, char decimalMark, boolean fractionsSeen, String reason, Confidence confidence) {
  public Dialect {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(confidence, "confidence");
  }

  /** The delimiter in a form that can be seen. */
  public String delimiterWord() {
    return switch (delimiter) {
      case '\t' -> "tab";
      case ' ' -> "space";
      default -> String.valueOf(delimiter);
    };
  }
}
