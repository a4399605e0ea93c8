package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What people noted about runs. Notes are added and withdrawn, never changed or deleted. */
@Repository
public class KeptNotes {
  private static final AuditedTable NOTE = AuditedTable.of("note");

  private final JdbcClient database;
  private final Changes changes;
  private final Clock clock;

  KeptNotes(JdbcClient database, Changes changes, Clock clock) {
    this.database = database;
    this.changes = changes;
    this.clock = clock;
  }

  /** All notes of a run, withdrawn ones too, in the order they were written. */
  public List<KeptNote> list(long runId) {
    return database
        .sql(
            """
            select id, run_id, at_utc, at_s, text, author, written_utc, withdrawn_utc
            from note
            where run_id = :run_id
            order by id
            """)
        .param("run_id", runId)
        .query(KeptNotes::note)
        .list();
  }

  /** Keeps a note about a moment. */
  public long add(long runId, Instant at, String text, String author) {
    return add(runId, Optional.of(at), OptionalDouble.empty(), text, author);
  }

  /** Keeps a note about a moment in a log whose start nobody knows, s after its first row. */
  public long addAfterStart(long runId, double at_s, String text, String author) {
    return add(runId, Optional.empty(), OptionalDouble.of(at_s), text, author);
  }

  private long add(
      long runId, Optional<Instant> at, OptionalDouble at_s, String text, String author) {
    return changes.add(
        NOTE,
        () ->
            database
                .sql(
                    """
            insert into note (run_id, at_utc, at_s, text, author, written_utc)
            values (:run_id, :at_utc, :at_s, :text, :author, :written_utc)
            returning id
            """)
                .param("run_id", runId)
                .param("at_utc", at.map(Instant::toString).orElse(null))
                .param("at_s", at_s.isPresent() ? at_s.getAsDouble() : null)
                .param("text", text)
                .param("author", author)
                .param("written_utc", now())
                .query(Long.class)
                .single());
  }

  /** The note of a run with this number. */
  public Optional<KeptNote> find(long runId, long id) {
    return list(runId).stream().filter(note -> note.id() == id).findFirst();
  }

  /** Withdraws a note of a run; one that is withdrawn already keeps its time. */
  public void withdraw(long runId, long id) {
    changes.change(
        NOTE,
        id,
        () ->
            database
                .sql(
                    """
            update note
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

  private static KeptNote note(ResultSet row, int number) throws SQLException {
    double at_s = row.getDouble("at_s");
    boolean afterStart = !row.wasNull();
    return new KeptNote(
        row.getLong("id"),
        row.getLong("run_id"),
        Optional.ofNullable(row.getString("at_utc")).map(Instant::parse),
        afterStart ? OptionalDouble.of(at_s) : OptionalDouble.empty(),
        row.getString("text"),
        row.getString("author"),
        Instant.parse(row.getString("written_utc")),
        Optional.ofNullable(row.getString("withdrawn_utc")).map(Instant::parse));
  }
}
