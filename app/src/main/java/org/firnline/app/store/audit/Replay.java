package org.firnline.app.store.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * What the records must be according to the audit: every entry applied in order. Values are held as
 * hashes, so that a large laboratory fits.
 */
public final class Replay {
  private final Map<String, Map<String, Map<String, String>>> tables = new LinkedHashMap<>();

  /** Starts with nothing. */
  public Replay() {}

  /** Applies the next entry; events without a row leave nothing. */
  public void apply(AuditEntry entry) {
    if (entry.action().equals(Action.CLOCK.key())) {
      return;
    }
    Map<String, String> row =
        tables
            .computeIfAbsent(entry.subject(), table -> new LinkedHashMap<>())
            .computeIfAbsent(entry.subjectKey(), key -> new TreeMap<>());
    row.keySet().removeAll(RowImage.ofJson(entry.oldValues()).values().keySet());
    RowImage.ofJson(entry.newValues())
        .values()
        .forEach((column, value) -> row.put(column, new Digest().add(value).hex()));
  }

  /** The tables and subjects of events that appeared. */
  public Set<String> subjects() {
    return new TreeSet<>(tables.keySet());
  }

  /**
   * The rows of a table that are not what the audit says, in the order of its entries; then those
   * it does not know.
   */
  public List<String> unlike(JdbcClient database, AuditedTable table) {
    Map<String, Map<String, String>> expected =
        new LinkedHashMap<>(tables.getOrDefault(table.name(), Map.of()));
    Map<String, String> told = new LinkedHashMap<>();
    expected.keySet().forEach(key -> told.put(key, table.name() + " " + key + " is missing"));
    Map<String, String> unknown = new LinkedHashMap<>();
    database
        .sql("select * from " + table.name() + " order by " + table.keyColumn())
        .query((row, number) -> RowImage.of(row))
        .list()
        .forEach(
            row -> {
              String key = row.value(table.keyColumn()).orElse("");
              Optional<Map<String, String>> known = Optional.ofNullable(expected.get(key));
              if (known.isEmpty()) {
                unknown.put(key, table.name() + " " + key + " is not in the audit");
              } else {
                told.remove(key);
                firstUnlike(row, known.get())
                    .ifPresent(
                        column ->
                            told.put(key, table.name() + " " + key + " was altered: " + column));
              }
            });
    List<String> problems = new java.util.ArrayList<>(told.values());
    problems.addAll(unknown.values());
    return problems;
  }

  private static Optional<String> firstUnlike(RowImage row, Map<String, String> expected) {
    return expected.entrySet().stream()
        .filter(column -> !isSame(row.value(column.getKey()).orElse(""), column.getValue()))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** Secrets stand in the audit as their hash. */
  private static boolean isSame(String value, String expectedHash) {
    Digest digest = new Digest();
    return digest.add(value).hex().equals(expectedHash)
        || digest.add("sha256:" + new Digest().add(value).hex()).hex().equals(expectedHash);
  }
}
