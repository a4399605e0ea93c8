package org.firnline.app.store.audit;

import java.util.Locale;
import org.springframework.jdbc.core.simple.JdbcClient;

/** How strictly the laboratory keeps its records. */
public enum Profile {
  /** Names are kept, reasons are welcome, signatures are not needed. */
  OPEN,

  /** Every change needs its reason, and records are signed. */
  CONTROLLED;

  /** The setting that holds it. */
  public static final String SETTING = "profile";

  /** As stored and as the last part of its message key. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The profile a setting's value stands for; anything but {@code controlled} is open. */
  public static Profile of(String value) {
    return CONTROLLED.key().equals(value) ? CONTROLLED : OPEN;
  }

  static Profile of(JdbcClient database) {
    return database
        .sql("select value from setting where name = :name")
        .param("name", SETTING)
        .query(String.class)
        .optional()
        .map(Profile::of)
        .orElse(OPEN);
  }
}
