package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who used which dryer for how long, and what had been predicted of each run. */
@Repository
public class KeptUse {
  private static final AuditedTable USE = AuditedTable.keyedBy("machine_use", "run_key");
  private static final AuditedTable PREDICTION = AuditedTable.keyedBy("prediction", "run_key");

  private final JdbcClient database;
  private final Changes changes;

  KeptUse(JdbcClient database, Changes changes) {
    this.database = database;
    this.changes = changes;
  }

  /**
   * One run's share of a dryer.
   *
   * @param runKey names the run
   * @param dryerId on which dryer
   * @param title of the run
   * @param group who it was for
   * @param started UTC
   * @param hours how long it held the dryer, h; 0 or more
   */
  public record Use(
      String runKey, long dryerId, String title, String group, Instant started, double hours) {}

  /**
   * What was predicted before a run, and what happened.
   *
   * @param runKey names the run
   * @param dryerId on which dryer
   * @param title of the run
   * @param product what was dried
   * @param started UTC
   * @param predicted_s drying time, best value
   * @param low_s lower end of its 90 % band
   * @param high_s upper end of its 90 % band
   * @param actual_s what it took
   * @param recipe_s how long the recipe held primary drying
   */
  public record Prediction(
      String runKey,
      long dryerId,
      String title,
      String product,
      Instant started,
      double predicted_s,
      double low_s,
      double high_s,
      double actual_s,
      double recipe_s) {}

  /** All use of all dryers, in time order. */
  public List<Use> list() {
    return database
        .sql(
            """
            select run_key, dryer_id, run_title, group_name, started_utc, hours
            from machine_use
            order by started_utc
            """)
        .query(KeptUse::use)
        .list();
  }

  /** Says who used a dryer. */
  public void set(Use use) {
    changes.change(
        USE,
        use.runKey(),
        () ->
            database
                .sql(
                    """
                    insert into machine_use
                      (run_key, dryer_id, run_title, group_name, started_utc, hours)
                    values (:run_key, :dryer_id, :run_title, :group_name, :started_utc, :hours)
                    on conflict (run_key) do update
                    set group_name = :group_name, hours = :hours
                    """)
                .param("run_key", use.runKey())
                .param("dryer_id", use.dryerId())
                .param("run_title", use.title())
                .param("group_name", use.group())
                .param("started_utc", use.started().toString())
                .param("hours", use.hours())
                .update());
  }

  /** All predictions, in time order. */
  public List<Prediction> predictions() {
    return database
        .sql(
            """
            select run_key, dryer_id, run_title, product, started_utc, predicted_s, low_s, high_s,
                   actual_s, recipe_s
            from prediction
            order by started_utc
            """)
        .query(KeptUse::prediction)
        .list();
  }

  /** Keeps a prediction with what happened; it is never changed. */
  public void add(Prediction made) {
    changes.change(
        PREDICTION,
        made.runKey(),
        () ->
            database
                .sql(
                    """
                    insert into prediction
                      (run_key, dryer_id, run_title, product, started_utc, predicted_s, low_s,
                       high_s, actual_s, recipe_s)
                    values (:run_key, :dryer_id, :run_title, :product, :started_utc, :predicted_s,
                            :low_s, :high_s, :actual_s, :recipe_s)
                    """)
                .param("run_key", made.runKey())
                .param("dryer_id", made.dryerId())
                .param("run_title", made.title())
                .param("product", made.product())
                .param("started_utc", made.started().toString())
                .param("predicted_s", made.predicted_s())
                .param("low_s", made.low_s())
                .param("high_s", made.high_s())
                .param("actual_s", made.actual_s())
                .param("recipe_s", made.recipe_s())
                .update());
  }

  private static Use use(ResultSet row, int number) throws SQLException {
    return new Use(
        row.getString("run_key"),
        row.getLong("dryer_id"),
        row.getString("run_title"),
        row.getString("group_name"),
        Instant.parse(row.getString("started_utc")),
        row.getDouble("hours"));
  }

  private static Prediction prediction(ResultSet row, int number) throws SQLException {
    return new Prediction(
        row.getString("run_key"),
        row.getLong("dryer_id"),
        row.getString("run_title"),
        row.getString("product"),
        Instant.parse(row.getString("started_utc")),
        row.getDouble("predicted_s"),
        row.getDouble("low_s"),
        row.getDouble("high_s"),
        row.getDouble("actual_s"),
        row.getDouble("recipe_s"));
  }
}
