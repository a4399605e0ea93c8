package org.firnline.app.store.keeping;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.firnline.app.store.audit.AuditedTable;
import org.jspecify.annotations.Nullable;

/** The tables of a database, as it describes them itself. */
final class Tables {
  private static final String HISTORY = "flyway_schema_history";

  private final Connection connection;

  Tables(Connection connection) {
    this.connection = connection;
  }

  /** All tables of the laboratory, each after those it refers to. */
  List<String> inOrder() throws SQLException {
    Map<String, Set<String>> needs = new LinkedHashMap<>();
    for (String table : names()) {
      needs.put(table, referredTo(table));
    }
    List<String> ordered = new ArrayList<>();
    while (ordered.size() < needs.size()) {
      List<String> ready =
          needs.entrySet().stream()
              .filter(table -> !ordered.contains(table.getKey()))
              .filter(table -> ordered.containsAll(table.getValue()))
              .map(Map.Entry::getKey)
              .toList();
      if (ready.isEmpty()) {
        throw new IllegalStateException("tables refer to each other in a circle: " + needs);
      }
      ordered.addAll(ready);
    }
    return ordered;
  }

  /** Tables with one key column, as the audit names rows. */
  List<AuditedTable> keyed() throws SQLException {
    List<AuditedTable> keyed = new ArrayList<>();
    for (String table : names()) {
      List<String> key = key(table);
      if (key.size() == 1) {
        keyed.add(AuditedTable.keyedBy(table, key.get(0)));
      }
    }
    return keyed;
  }

  private Set<String> names() throws SQLException {
    Set<String> names = new TreeSet<>();
    try (ResultSet table = described().getTables(null, schema(), "%", new String[] {"TABLE"})) {
      while (table.next()) {
        names.add(table.getString("TABLE_NAME").toLowerCase(Locale.ROOT));
      }
    }
    names.removeIf(name -> name.equals(HISTORY) || name.startsWith("sqlite_"));
    return names;
  }

  private Set<String> referredTo(String table) throws SQLException {
    Set<String> names = new TreeSet<>();
    try (ResultSet key = described().getImportedKeys(null, schema(), table)) {
      while (key.next()) {
        names.add(key.getString("PKTABLE_NAME").toLowerCase(Locale.ROOT));
      }
    }
    names.remove(table);
    return names;
  }

  private List<String> key(String table) throws SQLException {
    List<String> columns = new ArrayList<>();
    try (ResultSet column = described().getPrimaryKeys(null, schema(), table)) {
      while (column.next()) {
        columns.add(column.getString("COLUMN_NAME").toLowerCase(Locale.ROOT));
      }
    }
    return columns;
  }

  private DatabaseMetaData described() throws SQLException {
    return connection.getMetaData();
  }

  /** SQLite has no schemas; PostgreSQL has others beside ours. */
  private @Nullable String schema() throws SQLException {
    return connection.getSchema();
  }
}
