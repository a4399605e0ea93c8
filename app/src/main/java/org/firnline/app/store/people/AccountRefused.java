package org.firnline.app.store.people;

/** An account cannot be as asked for. Nothing was changed. */
public class AccountRefused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String reason;

  /**
   * Refuses.
   *
   * @param reason last part of the message key that explains it
   */
  public AccountRefused(String reason) {
    super("the account cannot be as asked for: " + reason);
    this.reason = reason;
  }

  /** Last part of the message key that explains it. */
  public String reason() {
    return reason;
  }
}
