package org.firnline.logs.channel;

/** What a cell of the file says about its own value. Only {@link #GOOD} samples have a value. */
public enum Quality {
  GOOD(0, "good"),
  /** Nothing was written, or a word that means nothing was written. */
  MISSING(1, "missing"),
  /** The sensor says "more than I can show"; the limit is kept if the file names it. */
  OVER_RANGE(2, "over range"),
  /** The sensor says "less than I can show"; the limit is kept if the file names it. */
  UNDER_RANGE(3, "under range"),
  /** The sensor or the machine behind it was switched off. */
  OFF(4, "off"),
  /** A broken or unplugged sensor, told by a word or by a number that stands for one. */
  OPEN_SENSOR(5, "open sensor"),
  /** The logger marks the sample as bad. */
  BAD(6, "bad"),
  /** The cell holds something that is neither a number nor a known word. */
  UNREADABLE(7, "unreadable");

  private final byte code;
  private final String label;

  Quality(int code, String label) {
    this.code = (byte) code;
    this.label = label;
  }

  /** The byte a series keeps for it. */
  byte code() {
    return code;
  }

  /** The quality behind a kept byte. */
  static Quality of(byte code) {
    for (Quality quality : values()) {
      if (quality.code == code) {
        return quality;
      }
    }
    throw new IllegalArgumentException("quality code " + code + " is not known");
  }

  /** The words shown to people and used in answers for machines. */
  public String label() {
    return label;
  }
}
