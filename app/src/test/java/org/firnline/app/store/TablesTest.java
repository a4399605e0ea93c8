package org.firnline.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firnline.app.store.database.Dialect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both databases have the same tables, and each table is a record or says why it is none. */
class TablesTest {
  private static final Path MIGRATIONS = Path.of("src/main/resources/db/migration");
  private static final Path SOURCES = Path.of("src/main/java");

  /** Tables without entries in the audit. */
  private static final Map<String, String> NO_RECORDS =
      Map.of(
          "audit", "the audit itself",
          "audit_head", "the audit itself",
          "flyway_schema_history", "which migrations ran");

  @TempDir Path root;

  private Set<String> columns(Dialect dialect) throws SQLException {
    try (OpenStore store = Stores.open(dialect, root.resolve(dialect.name()));
        Connection connection = store.source().getConnection();
        ResultSet column =
            connection
                .getMetaData()
                .getColumns(null, dialect == Dialect.POSTGRESQL ? "public" : null, "%", "%")) {
      Set<String> columns = new TreeSet<>();
      while (column.next()) {
        columns.add(
            (column.getString("TABLE_NAME") + "." + column.getString("COLUMN_NAME"))
                .toLowerCase(Locale.ROOT));
      }
      columns.removeIf(name -> name.startsWith("flyway") || name.startsWith("sqlite_"));
      return columns;
    }
  }

  @Test
  void areTheSameOnBothDatabases() throws SQLException {
    assertThat(columns(Dialect.POSTGRESQL)).isEqualTo(columns(Dialect.SQLITE)).isNotEmpty();
  }

  @Test
  void haveMigrationsForBothDatabasesUnderEachNumber() throws IOException {
    assertThat(numbers("sqlite"))
        .as("write it once in common, with ${id} and ${bytes}, or under one number for each")
        .isEqualTo(numbers("postgresql"));
    assertThat(numbers("common")).doesNotContainAnyElementsOf(numbers("sqlite"));
  }

  private static Set<String> numbers(String folder) throws IOException {
    try (Stream<Path> files = Files.list(MIGRATIONS.resolve(folder))) {
      return files
          .map(file -> file.getFileName().toString().replaceFirst("__.*", ""))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Test
  void r_aud_01_areAuditedOrSayWhyTheyAreNoRecords() throws SQLException, IOException {
    Set<String> tables =
        columns(Dialect.SQLITE).stream()
            .map(name -> name.replaceFirst("\\..*", ""))
            .collect(Collectors.toCollection(TreeSet::new));
    tables.removeAll(NO_RECORDS.keySet());
    tables.removeAll(audited());
    tables.remove("product"); // nothing writes it yet
    assertThat(tables).isEmpty();
  }

  private static Set<String> audited() throws IOException {
    Pattern named = Pattern.compile("AuditedTable\\s*\\.(?:of|keyedBy)\\(\\s*\"([a-z_]+)\"");
    Set<String> names = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        named.matcher(Files.readString(file)).results().forEach(r -> names.add(r.group(1)));
      }
    }
    return names;
  }
}
