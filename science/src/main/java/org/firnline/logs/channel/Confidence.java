package org.firnline.logs.channel;

/**
 * How sure a reading or a judgment is. Three words rather than a number, because none of the
 * evidence in a log is calibrated well enough to print a probability.
 */
public enum Confidence {
  /** A guess that a person should look at. */
  LOW("low"),
  /** More likely than not; one sign speaks for it and nothing against it. */
  MEDIUM("medium"),
  /** Several independent signs agree, or the file says so itself. */
  HIGH("high");

  private final String label;

  Confidence(String label) {
    this.label = label;
  }

  /** The word shown to people and used in answers for machines. */
  public String label() {
    return label;
  }

  /** The lower of two confidences: a chain is as strong as its weakest link. */
  public Confidence and(Confidence other) {
    return compareTo(other) <= 0 ? this : other;
  }
}
