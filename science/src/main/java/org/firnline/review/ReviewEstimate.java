package org.firnline.review;

import java.util.Objects;
import java.util.Optional;
import org.firnline.evidence.Band;

/**
 * Something about dryer, product or sensors that this log determines, or that it does not and why.
 *
 * @param name stable name for programs
 * @param about channel or thing it belongs to
 * @param unit SI unit of the value; "1" for a ratio
 * @param value value with limits that hold nine chances in ten; empty if the log cannot tell
 * @param note how it was read, or what is missing, in words
 */
public record ReviewEstimate(
    String name, String about, String unit, Optional<Band> value, String note) {
  public ReviewEstimate {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(note, "note");
  }

  static ReviewEstimate of(
      String name, String about, String unit, double best, double halfWidth, String note) {
    double half = Math.abs(halfWidth);
    return new ReviewEstimate(
        name, about, unit, Optional.of(new Band(best - half, best, best + half)), note);
  }

  static ReviewEstimate unknown(String name, String about, String unit, String why) {
    return new ReviewEstimate(name, about, unit, Optional.empty(), why);
  }
}
