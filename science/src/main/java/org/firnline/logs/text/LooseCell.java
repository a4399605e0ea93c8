package org.firnline.logs.text;

import java.util.Objects;
import org.firnline.logs.channel.Quality;

/**
 * What a cell holds that is not a plain number.
 *
 * @param kind number, word with a known meaning, or text
 * @param quality what the cell says about its sample
 * @param number the number, NaN if there is none; the limit for "&gt;1000"
 * @param unit a unit written behind the number, empty if none
 */
public record LooseCell(Kind kind, Quality quality, double number, String unit) {

  /** What sort of cell it is. */
  public enum Kind {
    NUMBER,
    WORD,
    TEXT
  }

  public LooseCell {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(quality, "quality");
    Objects.requireNonNull(unit, "unit");
  }

  static LooseCell text() {
    return new LooseCell(Kind.TEXT, Quality.UNREADABLE, Double.NaN, "");
  }

  static LooseCell word(Quality quality) {
    return new LooseCell(Kind.WORD, quality, Double.NaN, "");
  }
}
