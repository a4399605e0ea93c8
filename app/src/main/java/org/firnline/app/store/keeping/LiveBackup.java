package org.firnline.app.store.keeping;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import javax.sql.DataSource;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.database.StoreAddress;
import org.springframework.stereotype.Component;

/** Backups of the laboratory that is served, while it is served. */
@Component
public class LiveBackup {
  private final Backup backup;

  LiveBackup(DataSource live, StoreAddress address, DataFolder folder, Clock clock) {
    this.backup = new Backup(live, address.dialect(), folder, clock);
  }

  /** Makes one and proves it, see {@link Backup#make}. */
  public BackupReport make(Path target) throws IOException {
    return backup.make(target);
  }
}
