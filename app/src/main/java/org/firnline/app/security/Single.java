package org.firnline.app.security;

/** The one person at this machine, who is asked for no name until the laboratory is shared. */
public final class Single {
  /** The name under which the audit keeps what that person does. */
  public static final String PERSON = "this machine";

  private Single() {}
}
