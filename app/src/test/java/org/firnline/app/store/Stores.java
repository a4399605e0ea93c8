package org.firnline.app.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicInteger;
import org.firnline.app.store.audit.Occasion;
import org.firnline.app.store.audit.Occasions;
import org.firnline.app.store.database.Dialect;
import org.firnline.app.store.database.StoreAddress;

/** Laboratories for tests, in SQLite or in a real PostgreSQL that is started once. */
public final class Stores {
  /** The hour at which all of them stand still. */
  public static final Instant NOW = Instant.parse("2026-11-25T14:02:00Z");

  /** Somebody who gives a reason. */
  public static final Occasions ROWAN = () -> new Occasion("rowan", "page", "as agreed");

  private static final AtomicInteger COUNT = new AtomicInteger();

  private Stores() {}

  private static final class Server {
    static final EmbeddedPostgres POSTGRES = start();

    private static EmbeddedPostgres start() {
      try {
        return EmbeddedPostgres.builder().setServerConfig("fsync", "off").start();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The address of an empty database. */
  public static StoreAddress empty(Dialect dialect, Path folder) {
    if (dialect == Dialect.SQLITE) {
      return StoreAddress.of("", folder.resolve("firnline.db"));
    }
    String name = "lab" + COUNT.incrementAndGet();
    try (Connection server = Server.POSTGRES.getPostgresDatabase().getConnection();
        Statement statement = server.createStatement()) {
      statement.execute("create database " + name);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return StoreAddress.of(
        Server.POSTGRES.getJdbcUrl("postgres", name), folder.resolve("firnline.db"));
  }

  /** An empty laboratory in which somebody works and time stands still. */
  public static OpenStore open(Dialect dialect, Path folder) {
    return open(dialect, folder, ROWAN, Clock.fixed(NOW, ZoneOffset.UTC));
  }

  /** An empty laboratory. */
  public static OpenStore open(Dialect dialect, Path folder, Occasions occasions, Clock clock) {
    DataFolder laboratory = new DataFolder(folder.resolve("laboratory"));
    return new OpenStore(laboratory, empty(dialect, laboratory.root()), occasions, clock);
  }
}
