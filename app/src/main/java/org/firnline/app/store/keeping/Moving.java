package org.firnline.app.store.keeping;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.firnline.app.store.audit.Unaudited;

/**
 * Copies all tables of a laboratory into another, empty database of either kind, and compares both
 * row by row. The audit moves with them, entry by entry, hash by hash. All in one transaction of
 * the receiver: a copy that does not compare equal is not kept.
 */
@Unaudited("rows move together with the entries that speak of them")
final class Moving {
  static final int ROWS_AT_ONCE = 500;

  private Moving() {}

  /**
   * Copies.
   *
   * @return what both hold
   * @throws IllegalStateException if the receiver is not empty or differs afterwards
   */
  static List<TableDigest> copy(DataSource from, DataSource to) {
    try (Connection source = from.getConnection();
        Connection target = to.getConnection()) {
      source.setTransactionIsolation(Connection.TRANSACTION_SERIALIZABLE);
      source.setAutoCommit(false);
      target.setAutoCommit(false);
      List<TableDigest> copied = copy(source, target);
      target.commit();
      source.rollback();
      return copied;
    } catch (SQLException e) {
      throw new IllegalStateException(
          "the laboratory could not be copied, nothing was kept: " + e.getMessage(), e);
    }
  }

  private static List<TableDigest> copy(Connection source, Connection target) throws SQLException {
    mustBeEmpty(target);
    for (String table : new Tables(source).inOrder()) {
      copy(table, source, target);
    }
    List<TableDigest> here = TableDigest.ofAll(source);
    List<TableDigest> there = TableDigest.ofAll(target);
    if (!here.equals(there)) {
      throw new IllegalStateException(
          "the copy differs from the laboratory, nothing was kept: " + firstUnlike(here, there));
    }
    return here;
  }

  private static String firstUnlike(List<TableDigest> here, List<TableDigest> there) {
    return here.stream()
        .filter(table -> !there.contains(table))
        .findFirst()
        .map(table -> table.table() + " with " + table.rows() + " rows")
        .orElse("a table is missing");
  }

  private static void mustBeEmpty(Connection target) throws SQLException {
    for (TableDigest table : TableDigest.ofAll(target)) {
      if (table.rows() > 0 && !table.table().equals("audit_head")) {
        throw new IllegalStateException(
            "the receiving database is not empty: "
                + table.table()
                + " holds "
                + table.rows()
                + " rows. Name an empty one.");
      }
    }
  }

  private static void copy(String table, Connection source, Connection target) throws SQLException {
    try (Statement reading = source.createStatement()) {
      reading.setFetchSize(ROWS_AT_ONCE);
      try (ResultSet row = reading.executeQuery("select * from " + table);
          PreparedStatement writing = target.prepareStatement(insert(table, row.getMetaData()))) {
        int waiting = 0;
        while (row.next()) {
          for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
            writing.setObject(column, row.getObject(column));
          }
          writing.addBatch();
          if (++waiting % ROWS_AT_ONCE == 0) {
            writing.executeBatch();
          }
        }
        writing.executeBatch();
      }
    }
    goOnCounting(table, target);
  }

  /** The head of the audit is there from the start and is brought to where it was. */
  private static String insert(String table, ResultSetMetaData columns) throws SQLException {
    int count = columns.getColumnCount();
    String[] names = new String[count];
    for (int column = 1; column <= count; column++) {
      names[column - 1] = columns.getColumnLabel(column).toLowerCase(Locale.ROOT);
    }
    String set =
        IntStream.range(0, count)
            .mapToObj(column -> names[column] + " = excluded." + names[column])
            .collect(Collectors.joining(", "));
    return "insert into "
        + table
        + " ("
        + String.join(", ", names)
        + ") values ("
        + String.join(", ", Collections.nCopies(count, "?"))
        + ")"
        + (table.equals("audit_head") ? " on conflict (id) do update set " + set : "");
  }

  /** PostgreSQL counts on its own; it goes on after the greatest number that came. */
  private static void goOnCounting(String table, Connection target) throws SQLException {
    if (!target.getMetaData().getDatabaseProductName().equals("PostgreSQL")) {
      return;
    }
    try (Statement statement = target.createStatement();
        ResultSet counted =
            statement.executeQuery(
                "select 1 from information_schema.columns where table_name = '"
                    + table
                    + "' and column_name = 'id' and is_identity = 'YES'")) {
      if (counted.next()) {
        statement.execute(
            "select setval(pg_get_serial_sequence('"
                + table
                + "', 'id'), coalesce(max(id), 0) + 1, false) from "
                + table);
      }
    }
  }
}
