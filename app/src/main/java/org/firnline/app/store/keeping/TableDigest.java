package org.firnline.app.store.keeping;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.firnline.app.store.audit.Digest;

/**
 * What a table holds, in one line: equal on two databases if and only if they hold the same rows.
 *
 * @param table its name
 * @param rows how many
 * @param hash SHA-256 over the sorted hashes of all rows
 */
record TableDigest(String table, long rows, String hash) {

  static List<TableDigest> ofAll(Connection connection) throws SQLException {
    List<TableDigest> all = new ArrayList<>();
    for (String table : new Tables(connection).inOrder()) {
      all.add(of(table, connection));
    }
    return all;
  }

  static TableDigest of(String table, Connection connection) throws SQLException {
    List<String> hashes = new ArrayList<>();
    try (Statement statement = connection.createStatement()) {
      statement.setFetchSize(Moving.ROWS_AT_ONCE);
      try (ResultSet row = statement.executeQuery("select * from " + table)) {
        while (row.next()) {
          hashes.add(hash(row));
        }
      }
    }
    Collections.sort(hashes);
    Digest digest = new Digest();
    hashes.forEach(digest::add);
    return new TableDigest(table, hashes.size(), digest.hex());
  }

  private static String hash(ResultSet row) throws SQLException {
    ResultSetMetaData columns = row.getMetaData();
    Map<String, byte[]> values = new TreeMap<>();
    for (int column = 1; column <= columns.getColumnCount(); column++) {
      Object value = row.getObject(column);
      if (value != null) {
        values.put(columns.getColumnLabel(column).toLowerCase(Locale.ROOT), bytes(value));
      }
    }
    Digest digest = new Digest();
    values.forEach((column, value) -> digest.add(column).add(value));
    return digest.hex();
  }

  private static byte[] bytes(Object value) {
    return value instanceof byte[] bytes
        ? bytes
        : value.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
  }
}
