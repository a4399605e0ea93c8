package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.audit.Unaudited;
import org.firnline.care.CareFigure;
import org.firnline.care.CarePoint;
import org.firnline.care.CareTask;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Figures of each dryer's health, and what is due. */
@Repository
public class KeptCare {
  private static final AuditedTable TASK = AuditedTable.of("care_task");
  private static final double DAY_S = 86_400;

  private final JdbcClient database;
  private final Changes changes;

  KeptCare(JdbcClient database, Changes changes) {
    this.database = database;
    this.changes = changes;
  }

  /**
   * A task with its number.
   *
   * @param id its key
   * @param task what and when
   */
  public record KeptTask(String id, CareTask task) {}

  /** All figures of a dryer, in time order. */
  public List<CarePoint> points(long dryerId) {
    return database
        .sql(
            """
            select figure, at_utc, run_title, value_si
            from care_figure
            where dryer_id = :dryer_id
            order by at_utc
            """)
        .param("dryer_id", dryerId)
        .query(KeptCare::point)
        .list()
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }

  /** Keys of the runs whose figures are kept already. */
  public Set<String> runs(long dryerId) {
    return new TreeSet<>(
        database
            .sql("select distinct run_key from care_figure where dryer_id = :dryer_id")
            .param("dryer_id", dryerId)
            .query(String.class)
            .list());
  }

  /** Keeps one figure of one run; a figure that is there already is left. */
  @Unaudited("computed from a log and computed again at will")
  public void keep(long dryerId, String runKey, CarePoint point) {
    database
        .sql(
            """
            insert into care_figure (dryer_id, run_key, run_title, at_utc, figure, value_si)
            values (:dryer_id, :run_key, :run_title, :at_utc, :figure, :value_si)
            on conflict do nothing
            """)
        .param("dryer_id", dryerId)
        .param("run_key", runKey)
        .param("run_title", point.run())
        .param("at_utc", point.at().toString())
        .param("figure", point.figure().label())
        .param("value_si", point.value())
        .update();
  }

  /** What is to be done to a dryer. */
  public List<KeptTask> tasks(long dryerId) {
    return database
        .sql(
            """
            select id, name, last_utc, every_days, running_hours
            from care_task
            where dryer_id = :dryer_id
            order by name
            """)
        .param("dryer_id", dryerId)
        .query(KeptCare::task)
        .list();
  }

  /** Sets a task and its intervals, or changes them. */
  public void set(long dryerId, CareTask task) {
    String id = dryerId + "/" + task.name();
    changes.change(
        TASK,
        id,
        () ->
            database
                .sql(
                    """
                    insert into care_task
                      (id, dryer_id, name, last_utc, every_days, running_hours)
                    values (:id, :dryer_id, :name, :last_utc, :every_days, :running_hours)
                    on conflict (id) do update
                    set last_utc = :last_utc, every_days = :every_days,
                        running_hours = :running_hours
                    """)
                .param("id", id)
                .param("dryer_id", dryerId)
                .param("name", task.name())
                .param("last_utc", task.last().map(Instant::toString).orElse(""))
                .param("every_days", task.every().map(e -> e.toSeconds() / DAY_S).orElse(0.0))
                .param("running_hours", task.runningHours())
                .update());
  }

  private static Optional<CarePoint> point(ResultSet row, int number) throws SQLException {
    Optional<CareFigure> figure = CareFigure.find(row.getString("figure"));
    Instant at = Instant.parse(row.getString("at_utc"));
    String run = row.getString("run_title");
    double value = row.getDouble("value_si");
    return figure.map(known -> new CarePoint(known, at, run, value));
  }

  private static KeptTask task(ResultSet row, int number) throws SQLException {
    String last = row.getString("last_utc");
    double days = row.getDouble("every_days");
    return new KeptTask(
        row.getString("id"),
        new CareTask(
            row.getString("name"),
            last.isEmpty() ? Optional.empty() : Optional.of(Instant.parse(last)),
            days == 0 ? Optional.empty() : Optional.of(Duration.ofSeconds((long) (days * DAY_S))),
            row.getDouble("running_hours")));
  }
}
