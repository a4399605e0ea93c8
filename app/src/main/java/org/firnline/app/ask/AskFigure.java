package org.firnline.app.ask;

import org.firnline.evidence.Band;
import org.firnline.units.QuantityKind;

/**
 * A number of an answer.
 *
 * @param name its name in JSON, without unit; the words for it stand in the bundle
 * @param value in SI; a band of no width where nothing is uncertain
 * @param kind what it measures
 */
public record AskFigure(String name, Band value, QuantityKind kind) {

  static AskFigure exact(String name, double si, QuantityKind kind) {
    return new AskFigure(name, new Band(si, si, si), kind);
  }

  /** Whether low and high differ. */
  public boolean isBand() {
    return value.low() < value.high();
  }
}
