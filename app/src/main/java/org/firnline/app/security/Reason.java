package org.firnline.app.security;

/** The reason that a form may carry beside what it changes. */
public final class Reason {
  /** Name of the field. */
  public static final String FIELD = "why";

  private Reason() {}
}
