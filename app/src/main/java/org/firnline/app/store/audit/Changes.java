package org.firnline.app.store.audit;

import java.time.Clock;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionOperations;

/**
 * The one door for writing records. It runs the write in a transaction, sees for itself what the
 * row was and what it became, and leaves an entry in the audit in that same transaction: either
 * both are kept or neither.
 *
 * <pre>{@code
 * private static final AuditedTable PLAN = AuditedTable.of("plan");
 *
 * long id = changes.add(PLAN, () -> database.sql("insert into plan … returning id")…single());
 * changes.change(PLAN, id, () -> database.sql("update plan set title = …")…update());
 * }</pre>
 *
 * Who does it and why comes from the present {@link Occasion}. In the controlled profile a change
 * without a reason is refused with {@link ReasonMissing}; pages turn that into a question.
 */
@Component
public class Changes {
  private static final Set<Action> NEED_REASON =
      EnumSet.of(Action.CHANGE, Action.VOID, Action.ROLES);

  private final JdbcClient database;
  private final TransactionOperations transactions;
  private final Occasions occasions;
  private final Chain chain;

  /**
   * The door to one database.
   *
   * @param database what is written to
   * @param transactions on the same database; a running one is joined
   * @param clock gives each entry its time and zone
   * @param occasions knows who acts
   */
  public Changes(
      JdbcClient database, TransactionOperations transactions, Clock clock, Occasions occasions) {
    this.database = database;
    this.transactions = transactions;
    this.occasions = occasions;
    this.chain = new Chain(database, clock);
  }

  /**
   * Adds a row.
   *
   * @param insert writes it and gives its key
   * @return that key
   */
  public long add(AuditedTable table, LongSupplier insert) {
    return add(Action.CREATE, table, insert);
  }

  /** Adds a row that comes from elsewhere or means more than a creation. */
  public long add(Action action, AuditedTable table, LongSupplier insert) {
    return together(
        () -> {
          chain.hold();
          long key = insert.getAsLong();
          RowImage fresh = row(table, key).orElseThrow(() -> notThere(table, key));
          say(action, table, key, RowImage.none(), fresh.asTold(table));
          return key;
        });
  }

  /** Changes a row, or makes one whose key is known before. */
  public void change(AuditedTable table, Object key, Runnable write) {
    change(Action.CHANGE, table, key, write);
  }

  /**
   * Changes a row; what comes out the same leaves no entry.
   *
   * @throws ReasonMissing in the controlled profile, if a record or a right is changed without one
   * @throws IllegalStateException if the row is gone afterwards: records are voided, never removed
   */
  public void change(Action action, AuditedTable table, Object key, Runnable write) {
    together(
        () -> {
          chain.hold();
          Optional<RowImage> found = row(table, key).map(row -> row.asTold(table));
          write.run();
          RowImage fresh = row(table, key).orElseThrow(() -> notThere(table, key)).asTold(table);
          RowImage old = found.orElseGet(RowImage::none);
          if (!fresh.equals(old)) {
            if (found.isPresent() && NEED_REASON.contains(action)) {
              reasonGiven();
            }
            say(action, table, key, old.unlike(fresh), fresh.unlike(old));
          }
          return key;
        });
  }

  /**
   * Leaves an entry about something that is no change of a row: a failed sign-in, an export.
   *
   * @param subject what it was about; not the name of a table
   * @param key which one
   * @param facts what is worth knowing, by name
   */
  public void note(Action action, String subject, String key, Map<String, String> facts) {
    together(
        () -> {
          chain.hold();
          chain.append(
              occasions.now(),
              new Chain.Said(action, subject, key, RowImage.none(), new RowImage(facts)));
          return key;
        });
  }

  /** Runs several writes so that all are kept or none. */
  public <T> T together(Supplier<T> work) {
    T done = transactions.execute(status -> work.get());
    if (done == null) {
      throw new IllegalStateException("the work in a transaction gave no answer");
    }
    return done;
  }

  private void say(Action action, AuditedTable table, Object key, RowImage old, RowImage fresh) {
    chain.append(occasions.now(), new Chain.Said(action, table.name(), key.toString(), old, fresh));
  }

  private void reasonGiven() {
    if (occasions.now().why().isBlank() && Profile.of(database) == Profile.CONTROLLED) {
      throw new ReasonMissing();
    }
  }

  private Optional<RowImage> row(AuditedTable table, Object key) {
    return database
        .sql("select * from " + table.name() + " where " + table.keyColumn() + " = :key")
        .param("key", key)
        .query((row, number) -> RowImage.of(row))
        .optional();
  }

  private static IllegalStateException notThere(AuditedTable table, Object key) {
    return new IllegalStateException(
        table.name()
            + " "
            + key
            + " is not there after it was written; records are voided, never removed");
  }
}
