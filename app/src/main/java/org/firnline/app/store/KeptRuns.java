package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.audit.Unaudited;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The runs of this laboratory. */
@Repository
public class KeptRuns {
  private static final AuditedTable RUN =
      AuditedTable.of("run").derived("started_utc", "ended_utc", "worst_state", "worst_text");
  private static final String COLUMNS =
      "id, title, dryer_id, log_file_id, plan_id, critical_temperature_K,"
          + " started_utc, ended_utc, worst_state, worst_text";

  private final JdbcClient database;
  private final Changes changes;
  private final Clock clock;

  KeptRuns(JdbcClient database, Changes changes, Clock clock) {
    this.changes = changes;
    this.database = database;
    this.clock = clock;
  }

  /** All runs, latest start first. */
  public List<KeptRun> list() {
    return database
        .sql("select " + COLUMNS + " from run order by coalesce(started_utc, added_utc) desc")
        .query(KeptRuns::run)
        .list();
  }

  /** The run with this number. */
  public Optional<KeptRun> find(long id) {
    return database
        .sql("select " + COLUMNS + " from run where id = :id")
        .param("id", id)
        .query(KeptRuns::run)
        .optional();
  }

  /** The run that used this log. */
  public Optional<KeptRun> findByLog(long logFileId) {
    return database
        .sql("select " + COLUMNS + " from run where log_file_id = :log_file_id")
        .param("log_file_id", logFileId)
        .query(KeptRuns::run)
        .optional();
  }

  /** The run that started last on a dryer; runs whose start is unknown come after all others. */
  public Optional<KeptRun> findLatest(long dryerId) {
    return database
        .sql(
            "select "
                + COLUMNS
                + """
                 from run
                where dryer_id = :dryer_id
                order by started_utc is null, coalesce(started_utc, added_utc) desc, id desc
                limit 1
                """)
        .param("dryer_id", dryerId)
        .query(KeptRuns::run)
        .optional();
  }

  /** Adds a run read from a log; gives its number. */
  public long add(String title, long dryerId, long logFileId, Optional<Instant> started) {
    return changes.add(
        RUN,
        () ->
            database
                .sql(
                    """
            insert into run (title, dryer_id, log_file_id, started_utc, added_utc)
            values (:title, :dryer_id, :log_file_id, :started_utc, :added_utc)
            returning id
            """)
                .param("title", title)
                .param("dryer_id", dryerId)
                .param("log_file_id", logFileId)
                .param("started_utc", started.map(Instant::toString).orElse(null))
                .param("added_utc", clock.instant().truncatedTo(ChronoUnit.SECONDS).toString())
                .query(Long.class)
                .single());
  }

  /** Says what a run is to be judged against. */
  public void judgeAgainst(long id, OptionalLong planId, OptionalDouble criticalTemperature_K) {
    changes.change(
        RUN,
        id,
        () ->
            database
                .sql(
                    """
            update run
            set plan_id = :plan_id, critical_temperature_K = :critical_temperature_K
            where id = :id
            """)
                .param("plan_id", planId.isPresent() ? planId.getAsLong() : null)
                .param(
                    "critical_temperature_K",
                    criticalTemperature_K.isPresent() ? criticalTemperature_K.getAsDouble() : null)
                .param("id", id)
                .update());
  }

  /** Remembers the last review of a run in a line. */
  @Unaudited("computed from the log and computed again at will")
  public void summarize(long id, RunSummary summary) {
    database
        .sql(
            """
            update run
            set started_utc = :started_utc, ended_utc = :ended_utc,
                worst_state = :worst_state, worst_text = :worst_text
            where id = :id
            """)
        .param("started_utc", summary.started().map(Instant::toString).orElse(null))
        .param("ended_utc", summary.ended().map(Instant::toString).orElse(null))
        .param("worst_state", summary.worstState())
        .param("worst_text", summary.worstText())
        .param("id", id)
        .update();
  }

  /** Gives a run another title and dryer. */
  public void rename(long id, String title, long dryerId) {
    changes.change(
        RUN,
        id,
        () ->
            database
                .sql("update run set title = :title, dryer_id = :dryer_id where id = :id")
                .param("title", title)
                .param("dryer_id", dryerId)
                .param("id", id)
                .update());
  }

  private static KeptRun run(ResultSet row, int number) throws SQLException {
    return new KeptRun(
        row.getLong("id"),
        row.getString("title"),
        row.getLong("dryer_id"),
        optionalLong(row, "log_file_id"),
        optionalLong(row, "plan_id"),
        optionalDouble(row, "critical_temperature_K"),
        Optional.ofNullable(row.getString("started_utc")).map(Instant::parse),
        Optional.ofNullable(row.getString("ended_utc")).map(Instant::parse),
        worst(row));
  }

  private static Optional<KeptRun.Worst> worst(ResultSet row) throws SQLException {
    String state = row.getString("worst_state");
    String text = row.getString("worst_text");
    return state == null || text == null
        ? Optional.empty()
        : Optional.of(new KeptRun.Worst(state, text));
  }

  private static OptionalLong optionalLong(ResultSet row, String column) throws SQLException {
    long value = row.getLong(column);
    return row.wasNull() ? OptionalLong.empty() : OptionalLong.of(value);
  }

  private static OptionalDouble optionalDouble(ResultSet row, String column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
