package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows about attachments. */
@Repository
class AttachmentQueries {
  private static final AuditedTable ATTACHMENT = AuditedTable.of("attachment");

  private final JdbcClient database;
  private final Changes changes;
  private final Clock clock;

  AttachmentQueries(JdbcClient database, Changes changes, Clock clock) {
    this.database = database;
    this.changes = changes;
    this.clock = clock;
  }

  long add(long runId, KeptBytes content, Attachments.About about) {
    return changes.add(
        ATTACHMENT,
        () ->
            database
                .sql(
                    """
            insert into attachment (run_id, sha256, size_bytes, kind, original_name, caption,
                                    author, added_utc)
            values (:run_id, :sha256, :size_bytes, :kind, :original_name, :caption,
                    :author, :added_utc)
            returning id
            """)
                .param("run_id", runId)
                .param("sha256", content.sha256())
                .param("size_bytes", content.size_bytes())
                .param("kind", about.kind())
                .param("original_name", about.originalName())
                .param("caption", about.caption())
                .param("author", about.author())
                .param("added_utc", now())
                .query(Long.class)
                .single());
  }

  List<KeptAttachment> list(long runId) {
    return database
        .sql(
            """
            select id, run_id, sha256, size_bytes, kind, original_name, caption, author,
                   added_utc, withdrawn_utc
            from attachment
            where run_id = :run_id
            order by id
            """)
        .param("run_id", runId)
        .query(AttachmentQueries::attachment)
        .list();
  }

  void withdraw(long runId, long id) {
    changes.change(
        ATTACHMENT,
        id,
        () ->
            database
                .sql(
                    """
            update attachment
            set withdrawn_utc = :now
            where id = :id and run_id = :run_id and withdrawn_utc is null
            """)
                .param("now", now())
                .param("id", id)
                .param("run_id", runId)
                .update());
  }

  private String now() {
    return clock.instant().truncatedTo(ChronoUnit.SECONDS).toString();
  }

  private static KeptAttachment attachment(ResultSet row, int number) throws SQLException {
    return new KeptAttachment(
        row.getLong("id"),
        row.getLong("run_id"),
        new KeptBytes(row.getString("sha256"), row.getLong("size_bytes")),
        row.getString("kind"),
        row.getString("original_name"),
        row.getString("caption"),
        row.getString("author"),
        Instant.parse(row.getString("added_utc")),
        Optional.ofNullable(row.getString("withdrawn_utc")).map(Instant::parse));
  }
}
