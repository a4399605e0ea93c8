package org.firnline.app.store.keeping;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.audit.AuditEntry;
import org.firnline.app.store.audit.AuditTrail;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Replay;
import org.firnline.app.store.series.StoredSeries;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Is the laboratory as it was written? Follows the chain of the audit from its first entry, applies
 * every entry and compares the result with the rows that are there, and hashes every raw file and
 * every block of samples again.
 */
public final class Verification {
  private static final int AT_ONCE = 1_000;
  private static final String FIRST_PREVIOUS = "0".repeat(64);

  private final JdbcClient database;
  private final DataFolder folder;
  private final AuditTrail audit;
  private final StoredSeries series;
  private final DataSource source;

  /** Verifies this laboratory; nothing in it is changed. */
  public Verification(DataSource source, DataFolder folder) {
    this.source = source;
    this.database = JdbcClient.create(source);
    this.folder = folder;
    this.audit = new AuditTrail(database);
    this.series = new StoredSeries(database);
  }

  /** Verifies a laboratory that a command opened. */
  public static Verdict of(OpenStore store) {
    return new Verification(store.source(), store.folder()).verify();
  }

  /** Reads everything and says what is not as it was written. */
  public Verdict verify() {
    List<String> problems = new ArrayList<>();
    Replay replay = new Replay();
    AuditTrail.Head end = followChain(replay, problems);
    int rows = compareRows(replay, problems);
    int files = hashFiles(problems);
    int blocks = hashSeries(problems);
    return new Verdict(end.entries(), rows, files, blocks, end.hash(), problems);
  }

  private AuditTrail.Head followChain(Replay replay, List<String> problems) {
    long number = 0;
    String previous = FIRST_PREVIOUS;
    for (List<AuditEntry> some = audit.after(0, AT_ONCE);
        !some.isEmpty();
        some = audit.after(number, AT_ONCE)) {
      for (AuditEntry entry : some) {
        if (entry.number() != number + 1) {
          problems.add("audit entry " + (number + 1) + " is missing");
        } else if (!entry.hash().equals(entry.computedHash())) {
          problems.add(named(entry) + " was altered");
        } else if (!entry.previous().equals(previous)) {
          problems.add(named(entry) + " does not follow the entry before it");
        }
        previous = entry.hash();
        number = entry.number();
        replay.apply(entry);
      }
    }
    AuditTrail.Head head = audit.head();
    if (head.entries() != number || (number > 0 && !head.hash().equals(previous))) {
      problems.add(
          "audit entry "
              + (number + 1)
              + " is missing: the audit had "
              + head.entries()
              + " entries and ends with "
              + number);
    }
    return new AuditTrail.Head(number, previous);
  }

  private static String named(AuditEntry entry) {
    return "audit entry "
        + entry.number()
        + " ("
        + entry.action()
        + " "
        + entry.subject()
        + " "
        + entry.subjectKey()
        + ", "
        + entry.at()
        + ")";
  }

  private int compareRows(Replay replay, List<String> problems) {
    Set<String> subjects = replay.subjects();
    List<AuditedTable> audited;
    try (Connection connection = source.getConnection()) {
      audited =
          new Tables(connection)
              .keyed().stream()
                  .filter(table -> subjects.contains(table.name()))
                  .filter(table -> !table.name().startsWith("audit"))
                  .toList();
    } catch (SQLException e) {
      throw new IllegalStateException("the tables cannot be listed: " + e.getMessage(), e);
    }
    audited.forEach(table -> problems.addAll(replay.unlike(database, table)));
    return audited.size();
  }

  private record StoredBytes(String table, long id, String name, String sha256) {}

  private int hashFiles(List<String> problems) {
    List<StoredBytes> files =
        database
            .sql(
                """
                select 'log_file' as place, id, original_name, sha256 from log_file
                union all
                select 'attachment' as place, id, original_name, sha256 from attachment
                order by place desc, id
                """)
            .query(
                (row, number) ->
                    new StoredBytes(
                        row.getString("place"),
                        row.getLong("id"),
                        row.getString("original_name"),
                        row.getString("sha256")))
            .list();
    for (StoredBytes file : files) {
      Path kept = folder.rawFile(file.sha256());
      String called = file.table() + " " + file.id() + " (" + file.name() + ")";
      if (!Files.exists(kept)) {
        problems.add(called + " is missing: no file " + kept);
      } else if (!sha256(kept).equals(file.sha256())) {
        problems.add(called + " was altered: " + kept + " has another SHA-256");
      }
    }
    return files.size();
  }

  private int hashSeries(List<String> problems) {
    List<Long> ids = database.sql("select id from series order by id").query(Long.class).list();
    for (long id : ids) {
      Optional<Long> block = series.firstAltered(id);
      block.ifPresent(b -> problems.add("series " + id + " was altered: block " + b));
    }
    return ids.size();
  }

  static String sha256(Path file) {
    try (InputStream content = Files.newInputStream(file)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      try (DigestInputStream reading = new DigestInputStream(content, digest)) {
        reading.transferTo(java.io.OutputStream.nullOutputStream());
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
