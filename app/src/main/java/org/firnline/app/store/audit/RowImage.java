package org.firnline.app.store.audit;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A row as text, equal on both databases: column names in lower case, numbers as Java writes them,
 * bytes by their hash. A column without a value is left out.
 *
 * @param values by column, in order of the column names
 */
record RowImage(Map<String, String> values) {
  RowImage {
    values = new TreeMap<>(values);
  }

  static RowImage none() {
    return new RowImage(Map.of());
  }

  /** The row a result stands on. */
  static RowImage of(ResultSet row) throws SQLException {
    ResultSetMetaData columns = row.getMetaData();
    Map<String, String> values = new TreeMap<>();
    for (int column = 1; column <= columns.getColumnCount(); column++) {
      Object value = row.getObject(column);
      if (value != null) {
        values.put(columns.getColumnLabel(column).toLowerCase(Locale.ROOT), text(value));
      }
    }
    return new RowImage(values);
  }

  private static String text(Object value) {
    return value instanceof byte[] bytes
        ? "sha256:" + new Digest().add(bytes).hex()
        : value.toString();
  }

  /** Without columns that are no news, and with secrets as hashes. */
  RowImage asTold(AuditedTable table) {
    Map<String, String> told = new TreeMap<>(values);
    told.keySet().removeAll(table.derived());
    table
        .secret()
        .forEach(secret -> told.computeIfPresent(secret, (column, value) -> hidden(value)));
    return new RowImage(told);
  }

  private static String hidden(String value) {
    return value.isEmpty() ? "" : "sha256:" + new Digest().add(value).hex();
  }

  /** The values that are not the same in another image; a value that went is left out. */
  RowImage unlike(RowImage other) {
    Map<String, String> different = new TreeMap<>(values);
    different.entrySet().removeIf(e -> e.getValue().equals(other.values.get(e.getKey())));
    return new RowImage(different);
  }

  Optional<String> value(String column) {
    @Nullable String found = values.get(column);
    return Optional.ofNullable(found);
  }

  String json() {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    values.forEach(object::put);
    return object.toString();
  }

  static RowImage ofJson(String json) {
    Map<String, String> values = new TreeMap<>();
    JsonMapper.shared()
        .readTree(json)
        .properties()
        .forEach(entry -> values.put(entry.getKey(), entry.getValue().asString()));
    return new RowImage(values);
  }

  /** Hexadecimal SHA-256 of short texts, for comparing large images cheaply. */
  static byte[] shortHash(String value) {
    return HexFormat.of().parseHex(new Digest().add(value).hex().substring(0, 32));
  }
}
