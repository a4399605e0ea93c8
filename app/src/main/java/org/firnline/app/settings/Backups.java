package org.firnline.app.settings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import org.firnline.app.store.KeptSettings;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditEntry;
import org.firnline.app.store.audit.AuditQuestion;
import org.firnline.app.store.audit.AuditTrail;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.keeping.LiveBackup;
import org.springframework.stereotype.Service;

/** Makes backups now and every day, each proven by restoring it. */
@Service
class Backups {
  /** Setting: the folder they are put in. */
  static final String FOLDER = "backup.folder";

  /** Setting: the hour of the day, here. */
  static final String HOUR = "backup.hour";

  private static final int LAST_HOUR = 23;

  private final KeptSettings settings;
  private final AuditTrail audit;
  private final Changes changes;
  private final LiveBackup backup;
  private final Clock clock;

  Backups(
      KeptSettings settings, AuditTrail audit, Changes changes, LiveBackup backup, Clock clock) {
    this.settings = settings;
    this.audit = audit;
    this.changes = changes;
    this.backup = backup;
    this.clock = clock;
  }

  /** Sets folder and hour; false where that folder or hour cannot be. */
  boolean plan(String folder, int hour) {
    try {
      Path target = Path.of(folder.strip());
      if (folder.isBlank() || !target.isAbsolute() || hour < 0 || hour > LAST_HOUR) {
        return false;
      }
      Files.createDirectories(target);
      settings.put(FOLDER, target.toString());
      settings.put(HOUR, Integer.toString(hour));
      return true;
    } catch (InvalidPathException | IOException e) {
      return false;
    }
  }

  /** Makes one now and leaves an entry. */
  synchronized void make() throws IOException {
    String folder =
        settings.find(FOLDER).orElseThrow(() -> new IllegalStateException("no folder is set"));
    var report = backup.make(Path.of(folder));
    changes.note(
        Action.BACKUP,
        "laboratory",
        String.valueOf(report.file().getFileName()),
        Map.of(
            "rows", Long.toString(report.rows()),
            "files", Long.toString(report.files()),
            "auditEntries", Long.toString(report.auditEntries()),
            "auditHash", report.auditHash()));
  }

  /** Whether today's hour has come and no backup was made since. */
  boolean isDue() {
    if (settings.find(FOLDER).isEmpty()) {
      return false;
    }
    int hour = settings.find(HOUR).map(Integer::parseInt).orElse(2);
    ZonedDateTime now = ZonedDateTime.now(clock);
    ZonedDateTime today = now.with(LocalTime.of(hour, 0));
    Instant due = (today.isAfter(now) ? today.minusDays(1) : today).toInstant();
    AuditQuestion made =
        new AuditQuestion("", Action.BACKUP.key(), "", "", "", "", "", Long.MAX_VALUE);
    List<AuditEntry> last = audit.find(made, 1);
    return last.isEmpty() || last.get(0).at().isBefore(due);
  }
}
