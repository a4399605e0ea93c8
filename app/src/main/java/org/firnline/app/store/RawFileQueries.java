package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows about raw files. */
@Repository
class RawFileQueries {
  private static final AuditedTable LOG_FILE = AuditedTable.of("log_file");

  private final JdbcClient database;
  private final Changes changes;

  RawFileQueries(JdbcClient database, Changes changes) {
    this.changes = changes;
    this.database = database;
  }

  Optional<RawFile> findBySha256(String sha256) {
    return database
        .sql(
            """
            select id, sha256, size_bytes, original_name, arrived_utc, choices
            from log_file
            where sha256 = :sha256
            """)
        .param("sha256", sha256)
        .query(RawFileQueries::rawFile)
        .optional();
  }

  Optional<RawFile> find(long id) {
    return database
        .sql(
            """
            select id, sha256, size_bytes, original_name, arrived_utc, choices
            from log_file
            where id = :id
            """)
        .param("id", id)
        .query(RawFileQueries::rawFile)
        .optional();
  }

  List<RawFile> listWithoutRun() {
    return database
        .sql(
            """
            select id, sha256, size_bytes, original_name, arrived_utc, choices
            from log_file
            where id not in (select log_file_id from run where log_file_id is not null)
            order by arrived_utc desc
            """)
        .query(RawFileQueries::rawFile)
        .list();
  }

  void add(String sha256, long size_bytes, String originalName, Instant arrived) {
    changes.add(
        Action.IMPORT,
        LOG_FILE,
        () ->
            database
                .sql(
                    """
            insert into log_file (sha256, size_bytes, original_name, arrived_utc)
            values (:sha256, :size_bytes, :original_name, :arrived_utc)
            returning id
            """)
                .param("sha256", sha256)
                .param("size_bytes", size_bytes)
                .param("original_name", originalName)
                .param("arrived_utc", arrived.toString())
                .query(Long.class)
                .single());
  }

  void choose(long id, Map<String, String> choices) {
    changes.change(
        LOG_FILE,
        id,
        () ->
            database
                .sql("update log_file set choices = :choices where id = :id")
                .param("choices", PairText.write(choices))
                .param("id", id)
                .update());
  }

  private static RawFile rawFile(ResultSet row, int number) throws SQLException {
    return new RawFile(
        row.getLong("id"),
        row.getString("sha256"),
        row.getLong("size_bytes"),
        row.getString("original_name"),
        Instant.parse(row.getString("arrived_utc")),
        PairText.read(row.getString("choices")));
  }
}
