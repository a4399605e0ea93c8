package org.firnline.app.store.audit;

import java.util.Set;
import java.util.regex.Pattern;

/**
 * A table whose rows are records: what is written there goes through {@link Changes}.
 *
 * @param name as in the database
 * @param keyColumn the column that tells rows apart
 * @param derived columns that can be computed again from others, so that their changes are no news
 * @param secret columns whose values the audit shows as a hash only
 */
public record AuditedTable(String name, String keyColumn, Set<String> derived, Set<String> secret) {
  private static final Pattern WORD = Pattern.compile("[a-z][a-z0-9_]*");

  public AuditedTable {
    if (!WORD.matcher(name).matches() || !WORD.matcher(keyColumn).matches()) {
      throw new IllegalArgumentException("not a table and its key: " + name + ", " + keyColumn);
    }
    derived = Set.copyOf(derived);
    secret = Set.copyOf(secret);
  }

  /** A table whose key column is {@code id}. */
  public static AuditedTable of(String name) {
    return keyedBy(name, "id");
  }

  /** A table with another key column. */
  public static AuditedTable keyedBy(String name, String keyColumn) {
    return new AuditedTable(name, keyColumn, Set.of(), Set.of());
  }

  /** The same with columns, in lower case, that are no news. */
  public AuditedTable derived(String... columns) {
    return new AuditedTable(name, keyColumn, Set.of(columns), secret);
  }

  /** The same with columns, in lower case, that are not shown. */
  public AuditedTable secret(String... columns) {
    return new AuditedTable(name, keyColumn, derived, Set.of(columns));
  }
}
