package org.firnline.app.cli;

/** What a person typed or gave cannot be used; the message is for that person. */
final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BadInput(String message) {
    super(message);
  }
}
