package org.firnline.app.planfile;

import java.util.List;
import org.firnline.units.QuantityKind;

/**
 * One key of the plan file.
 *
 * @param path where it stands, such as {@code dryer.collector.rate}
 * @param type what is written under it
 * @param kind what a quantity measures; meaningless for the rest
 * @param choices the words that may stand there; empty for any
 */
public record PlanKey(String path, Type type, QuantityKind kind, List<String> choices) {

  /** What can be written under a key. */
  public enum Type {
    /** Any words. */
    TEXT,
    /** One of a few words. */
    CHOICE,
    /** yes or no. */
    FLAG,
    /** A whole number from 1. */
    COUNT,
    /** Date and time of the laboratory's clock. */
    TIME,
    /** A number with its unit. */
    QUANTITY,
    /** A number with its unit and, after +-, its standard deviation. */
    ESTIMATE,
    /** Two quantities, or the word none. */
    RANGE,
    /** Keys of its own. */
    SECTION,
    /** A list of further items with the keys of product, vessel and owner. */
    ITEMS
  }

  public PlanKey {
    choices = List.copyOf(choices);
  }

  /** The last part of its path. */
  String name() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** The section it stands in; empty at the top. */
  String section() {
    int dot = path.lastIndexOf('.');
    return dot < 0 ? "" : path.substring(0, dot);
  }
}
