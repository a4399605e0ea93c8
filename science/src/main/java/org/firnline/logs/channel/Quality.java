package org.firnline.logs.channel;

/** What a cell of the file says about its own value. Only {@link #GOOD} samples have a value. */
public enum Quality {
  GOOD("good"),
  /** Nothing was written, or a word that means nothing was written. */
  MISSING("missing"),
  /** The sensor says "more than I can show"; the limit is kept if the file names it. */
  OVER_RANGE("over range"),
  /** The sensor says "less than I can show"; the limit is kept if the file names it. */
  UNDER_RANGE("under range"),
  /** The sensor or the machine behind it was switched off. */
  OFF("off"),
  /** A broken or unplugged sensor, told by a word or by a number that stands for one. */
  OPEN_SENSOR("open sensor"),
  /** The logger marks the sample as bad. */
  BAD("bad"),
  /** The cell holds something that is neither a number nor a known word. */
  UNREADABLE("unreadable");

  private final String label;

  Quality(String label) {
    this.label = label;
  }

  /** The words shown to people and used in answers for machines. */
  public String label() {
    return label;
  }
}
