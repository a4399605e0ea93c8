package org.firnline.app.store.keeping;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.audit.AuditTrail;
import org.firnline.app.store.database.Databases;
import org.firnline.app.store.database.Dialect;
import org.firnline.app.store.database.StoreAddress;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Copies a laboratory into one file while people work in it. The file is a data folder in a zip:
 * its database is SQLite whatever the laboratory uses, so that it opens anywhere. It gets its name
 * only after it was restored into a scratch folder and found equal.
 */
public final class Backup {
  static final String DATABASE = "firnline.db";
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  private final DataSource live;
  private final Dialect dialect;
  private final DataFolder folder;
  private final Clock clock;

  /**
   * Backups of one laboratory.
   *
   * @param live its database
   * @param dialect the kind of that database
   * @param folder its folder
   * @param clock names the files
   */
  public Backup(DataSource live, Dialect dialect, DataFolder folder, Clock clock) {
    this.live = live;
    this.dialect = dialect;
    this.folder = folder;
    this.clock = clock;
  }

  /** Backups of a laboratory that a command opened. */
  public static Backup of(OpenStore store) {
    return new Backup(store.source(), store.address().dialect(), store.folder(), store.clock());
  }

  /**
   * Makes one and proves it.
   *
   * @param target the folder it is put in; made when missing
   */
  public BackupReport make(Path target) throws IOException {
    Files.createDirectories(target);
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    try (Scratch scratch = new Scratch(target)) {
      Path snapshot = scratch.folder().resolve(DATABASE);
      takeSnapshot(snapshot);
      Manifest manifest = describe(snapshot, now);
      Path zip = scratch.folder().resolve("arriving.zip");
      BackupFile.write(zip, manifest, snapshot, folder);
      Path trial = scratch.folder().resolve("trial");
      Restore.unpack(zip, trial);
      Path named = freeName(target, now);
      Files.move(zip, named, StandardCopyOption.ATOMIC_MOVE);
      return new BackupReport(
          named,
          Files.size(named),
          manifest.tables().stream().mapToLong(TableDigest::rows).sum(),
          manifest.files().size() - 1L,
          manifest.auditEntries(),
          manifest.auditHash());
    }
  }

  private static Path freeName(Path target, Instant now) {
    String stamp = "firnline-" + STAMP.format(now);
    Path wanted = target.resolve(stamp + ".zip");
    for (int n = 2; Files.exists(wanted); n++) {
      wanted = target.resolve(stamp + "-" + n + ".zip");
    }
    return wanted;
  }

  private void takeSnapshot(Path snapshot) {
    if (dialect == Dialect.SQLITE) {
      try (Connection connection = live.getConnection();
          PreparedStatement copying = connection.prepareStatement("vacuum into ?")) {
        copying.setString(1, snapshot.toString());
        copying.execute();
      } catch (SQLException e) {
        throw new IllegalStateException("the database could not be copied: " + e.getMessage(), e);
      }
    } else {
      try (HikariDataSource copy = Databases.open(StoreAddress.file(snapshot))) {
        Moving.copy(live, copy);
      }
    }
  }

  private Manifest describe(Path snapshot, Instant now) throws IOException {
    Content content = read(snapshot); // closed again: its write-ahead log moved into the file
    List<Manifest.StoredFile> files = new ArrayList<>();
    for (String sha256 : content.rawFiles()) {
      Path raw = folder.rawFile(sha256);
      String path = folder.root().relativize(raw).toString().replace('\\', '/');
      files.add(new Manifest.StoredFile(path, sha256, Files.size(raw)));
    }
    files.add(
        new Manifest.StoredFile(DATABASE, Verification.sha256(snapshot), Files.size(snapshot)));
    AuditTrail.Head head = content.head();
    return new Manifest(now, head.entries(), head.hash(), content.tables(), files);
  }

  private record Content(List<TableDigest> tables, AuditTrail.Head head, List<String> rawFiles) {}

  private static Content read(Path snapshot) {
    try (HikariDataSource copy = Databases.open(StoreAddress.file(snapshot));
        Connection connection = copy.getConnection()) {
      JdbcClient database = JdbcClient.create(copy);
      return new Content(
          TableDigest.ofAll(connection),
          new AuditTrail(database).head(),
          database
              .sql(
                  "select sha256 from log_file union select sha256 from attachment order by sha256")
              .query(String.class)
              .list());
    } catch (SQLException e) {
      throw new IllegalStateException("the copy cannot be read: " + e.getMessage(), e);
    }
  }
}
