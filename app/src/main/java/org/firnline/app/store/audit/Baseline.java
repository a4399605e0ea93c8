package org.firnline.app.store.audit;

import java.time.Clock;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionOperations;

/** Takes rows into the audit that were there before it began. */
public final class Baseline {
  private static final List<AuditedTable> FIRST_ROOMS =
      List.of(
          AuditedTable.of("dryer"),
          AuditedTable.of("log_file"),
          AuditedTable.of("plan"),
          AuditedTable.of("run"),
          AuditedTable.keyedBy("setting", "name"));

  private Baseline() {}

  /** Leaves one entry for every row, if the audit has none yet. */
  public static void take(JdbcClient database, TransactionOperations transactions, Clock clock) {
    Chain chain = new Chain(database, clock);
    transactions.executeWithoutResult(
        status -> {
          chain.hold();
          long entries = database.sql("select entries from audit_head").query(Long.class).single();
          if (entries == 0) {
            FIRST_ROOMS.forEach(table -> take(table, database, chain));
          }
        });
  }

  private static void take(AuditedTable table, JdbcClient database, Chain chain) {
    Occasion before = Occasion.program("kept before the audit began");
    database
        .sql("select * from " + table.name() + " order by " + table.keyColumn())
        .query((row, number) -> RowImage.of(row))
        .list()
        .forEach(
            row ->
                chain.append(
                    before,
                    new Chain.Said(
                        Action.CREATE,
                        table.name(),
                        row.value(table.keyColumn()).orElseThrow(),
                        RowImage.none(),
                        row.asTold(table))));
  }
}
