package org.firnline.app.settings;

import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Looks every few minutes whether a backup is due. */
@Component
class BackupClock {
  private static final Logger LOG = LoggerFactory.getLogger(BackupClock.class);
  private static final int EVERY_MINUTES = 5;

  private final Backups backups;
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "backup");
            thread.setDaemon(true);
            return thread;
          });

  BackupClock(Backups backups) {
    this.backups = backups;
  }

  @EventListener(ApplicationReadyEvent.class)
  void start() {
    var unused = clock.scheduleWithFixedDelay(this::look, 1, EVERY_MINUTES, TimeUnit.MINUTES);
  }

  /** A backup that fails is told in the journal and tried again. */
  void look() {
    try {
      if (backups.isDue()) {
        backups.make();
      }
    } catch (IOException | RuntimeException e) {
      LOG.error("The backup was not made: {}", e.getMessage());
    }
  }

  @PreDestroy
  void stop() {
    clock.shutdownNow();
  }
}
