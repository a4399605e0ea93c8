package org.firnline.app.store.audit;

import java.util.Locale;

/**
 * Which entries are wanted; what is blank does not restrict.
 *
 * @param person login
 * @param action key of an action
 * @param subject table
 * @param key record in it
 * @param from first time, ISO 8601 UTC
 * @param to time before which, ISO 8601 UTC
 * @param text part of a value or reason, in any case
 * @param below only entries with a smaller number
 */
public record AuditQuestion(
    String person,
    String action,
    String subject,
    String key,
    String from,
    String to,
    String text,
    long below) {

  /** Everything. */
  public static AuditQuestion all() {
    return new AuditQuestion("", "", "", "", "", "", "", Long.MAX_VALUE);
  }

  /** Everything about one record. */
  public static AuditQuestion about(String subject, String key) {
    return new AuditQuestion("", "", subject, key, "", "", "", Long.MAX_VALUE);
  }

  /** The same, further back. */
  public AuditQuestion below(long number) {
    return new AuditQuestion(person, action, subject, key, from, to, text, number);
  }

  String pattern() {
    return text.isBlank() ? "" : "%" + text.strip().toLowerCase(Locale.ROOT) + "%";
  }
}
