package org.firnline.logs.channel;

/** What kind of quantity a channel holds, and the SI unit its values are kept in. */
public enum Dimension {
  TEMPERATURE("K"),
  PRESSURE("Pa"),
  TIME("s"),
  MASS("kg"),
  MASS_RATE("kg/s"),
  /** A pure number: a ratio, a count, a step number, a status word. */
  NUMBER(""),
  /** Text: a state, an event, a comment. */
  TEXT(""),
  /** The unit was not recognized; values stay as the file gives them. */
  UNKNOWN("");

  private final String siUnit;

  Dimension(String siUnit) {
    this.siUnit = siUnit;
  }

  /** SI unit of the stored values; empty for numbers, text and unknown units. */
  public String siUnit() {
    return siUnit;
  }
}
