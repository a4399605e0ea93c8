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

/** The plans of this laboratory. */
@Repository
public class KeptPlans {
  private static final AuditedTable PLAN = AuditedTable.of("plan");

  private final JdbcClient database;
  private final Changes changes;
  private final Clock clock;

  KeptPlans(JdbcClient database, Changes changes, Clock clock) {
    this.changes = changes;
    this.database = database;
    this.clock = clock;
  }

  /** All plans, last saved first. */
  public List<KeptPlan> list() {
    return database
        .sql("select id, title, yaml, saved_utc from plan order by saved_utc desc, id desc")
        .query(KeptPlans::plan)
        .list();
  }

  /** The plan with this number. */
  public Optional<KeptPlan> find(long id) {
    return database
        .sql("select id, title, yaml, saved_utc from plan where id = :id")
        .param("id", id)
        .query(KeptPlans::plan)
        .optional();
  }

  /** Saves a plan as typed; gives its number. */
  public long add(String title, String yaml) {
    return changes.add(
        PLAN,
        () ->
            database
                .sql(
                    """
            insert into plan (title, yaml, saved_utc)
            values (:title, :yaml, :saved_utc)
            returning id
            """)
                .param("title", title)
                .param("yaml", yaml)
                .param("saved_utc", clock.instant().truncatedTo(ChronoUnit.SECONDS).toString())
                .query(Long.class)
                .single());
  }

  private static KeptPlan plan(ResultSet row, int number) throws SQLException {
    return new KeptPlan(
        row.getLong("id"),
        row.getString("title"),
        row.getString("yaml"),
        Instant.parse(row.getString("saved_utc")));
  }
}
