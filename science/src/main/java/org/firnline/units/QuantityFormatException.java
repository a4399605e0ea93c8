package org.firnline.units;

/**
 * A text that cannot be read as the quantity wanted; says what was wrong and what would be right.
 */
public final class QuantityFormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String advice;

  QuantityFormatException(String message, String advice) {
    super(message);
    this.advice = advice;
  }

  /** What to type instead. */
  public String advice() {
    return advice;
  }
}
