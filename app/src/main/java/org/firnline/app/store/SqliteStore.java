package org.firnline.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The embedded store: one SQLite file with a write-ahead log, foreign keys on. */
@Configuration(proxyBeanMethods = false)
class SqliteStore {
  private static final int WAIT_FOR_LOCK_MS = 5_000;
  private static final int CONNECTIONS = 4;

  @Bean
  DataFolder dataFolder(@Value("${firnline.data}") Path root) {
    return new DataFolder(root);
  }

  /** The zone in which this laboratory reads its clocks: that of this machine. */
  @Bean
  ZoneId zone() {
    return ZoneId.systemDefault();
  }

  @Bean
  Clock clock(ZoneId zone) {
    return Clock.system(zone);
  }

  @Bean(destroyMethod = "close")
  DataSource dataSource(DataFolder folder) {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setJournalMode(SQLiteConfig.JournalMode.WAL);
    settings.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    settings.enforceForeignKeys(true);
    settings.setBusyTimeout(WAIT_FOR_LOCK_MS);
    SQLiteDataSource sqlite = new SQLiteDataSource(settings);
    sqlite.setUrl("jdbc:sqlite:" + folder.database());
    HikariConfig pool = new HikariConfig();
    pool.setDataSource(sqlite);
    pool.setMaximumPoolSize(CONNECTIONS);
    pool.setMinimumIdle(1);
    return new HikariDataSource(pool);
  }
}
