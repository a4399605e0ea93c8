package org.firnline.app.store;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import org.firnline.app.store.audit.AuditTrail;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.audit.Occasions;
import org.firnline.app.store.database.Databases;
import org.firnline.app.store.database.StoreAddress;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** A laboratory opened without its pages, for commands that work and end. */
public final class OpenStore implements AutoCloseable {
  private final DataFolder folder;
  private final HikariDataSource source;
  private final JdbcClient database;
  private final Changes changes;
  private final Clock clock;

  /**
   * Opens a laboratory and brings its tables up to date.
   *
   * @param folder where its raw files are
   * @param address where its database is
   * @param occasions who works in it
   * @param clock its time and zone
   */
  public OpenStore(DataFolder folder, StoreAddress address, Occasions occasions, Clock clock) {
    this.folder = folder;
    this.clock = clock;
    this.source = Databases.open(address);
    this.database = JdbcClient.create(source);
    this.changes =
        new Changes(
            database,
            new TransactionTemplate(new DataSourceTransactionManager(source)),
            clock,
            occasions);
  }

  /** The folder. */
  public DataFolder folder() {
    return folder;
  }

  /** The pool of connections. */
  public HikariDataSource source() {
    return source;
  }

  /** For queries. */
  public JdbcClient database() {
    return database;
  }

  /** The door for writing. */
  public Changes changes() {
    return changes;
  }

  /** The audit. */
  public AuditTrail audit() {
    return new AuditTrail(database);
  }

  /** The settings. */
  public KeptSettings settings() {
    return new KeptSettings(database, changes);
  }

  /** The dryers. */
  public KeptDryers dryers() {
    return new KeptDryers(database, changes);
  }

  /** The plans. */
  public KeptPlans plans() {
    return new KeptPlans(database, changes, clock);
  }

  /** The runs. */
  public KeptRuns runs() {
    return new KeptRuns(database, changes, clock);
  }

  /** The raw files. */
  public RawFiles files() {
    return new RawFiles(folder, new RawFileQueries(database, changes), clock);
  }

  @Override
  public void close() {
    source.close();
  }
}
