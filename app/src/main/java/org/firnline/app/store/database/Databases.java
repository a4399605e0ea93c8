package org.firnline.app.store.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.postgresql.ds.PGSimpleDataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Opens databases and brings their tables up to date. */
public final class Databases {
  private static final int WAIT_FOR_LOCK_MS = 10_000;
  private static final int SQLITE_CONNECTIONS = 4;
  private static final int POSTGRESQL_CONNECTIONS = 8;
  private static final int MOST_WAIT_FOR_CONNECTION_MS = 15_000;

  private Databases() {}

  /** A database with all its tables; close it when done. */
  public static HikariDataSource open(StoreAddress address) {
    HikariDataSource database = pool(address);
    try {
      upToDate(database, address.dialect());
      return database;
    } catch (RuntimeException e) {
      database.close();
      throw e;
    }
  }

  private static HikariDataSource pool(StoreAddress address) {
    HikariConfig pool = new HikariConfig();
    boolean sqlite = address.dialect() == Dialect.SQLITE;
    pool.setDataSource(sqlite ? sqlite(address.url()) : postgresql(address.url()));
    pool.setMaximumPoolSize(sqlite ? SQLITE_CONNECTIONS : POSTGRESQL_CONNECTIONS);
    pool.setMinimumIdle(1);
    pool.setConnectionTimeout(MOST_WAIT_FOR_CONNECTION_MS);
    return new HikariDataSource(pool);
  }

  /**
   * Writers queue at the start of a transaction, not in its middle, where SQLite could only refuse.
   * FULL: what was acknowledged survives a power cut.
   */
  private static DataSource sqlite(String url) {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setJournalMode(SQLiteConfig.JournalMode.WAL);
    settings.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    settings.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    settings.enforceForeignKeys(true);
    settings.setBusyTimeout(WAIT_FOR_LOCK_MS);
    SQLiteDataSource sqlite = new SQLiteDataSource(settings);
    sqlite.setUrl(url);
    return sqlite;
  }

  private static DataSource postgresql(String url) {
    PGSimpleDataSource server = new PGSimpleDataSource();
    server.setUrl(url);
    server.setApplicationName("Firnline");
    return server;
  }

  /** Number blocks of several authors may arrive in any order. */
  private static void upToDate(DataSource database, Dialect dialect) {
    Flyway.configure()
        .dataSource(database)
        .locations(dialect.folder(), "classpath:db/migration/common")
        .placeholders(dialect.words())
        .outOfOrder(true)
        .load()
        .migrate();
  }
}
