package org.firnline.app.store.audit;

import java.util.Locale;

/** What an entry of the audit says was done. */
public enum Action {
  CREATE,
  CHANGE,
  VOID,
  SIGN,
  SIGN_IN,
  SIGN_IN_FAILED,
  SIGN_OUT,
  ROLES,
  CLOCK,
  IMPORT,
  EXPORT,
  BACKUP,
  RESTORE,
  CONFIGURE,
  REVIEW;

  /** As stored and as the last part of its message key. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
