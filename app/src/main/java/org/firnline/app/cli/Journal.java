package org.firnline.app.cli;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What libraries tell while a command works; the pages set up their own when they start. */
final class Journal {
  private Journal() {}

  /** Keeps the answer of a command free of anything but errors. */
  static void onlyErrors() {
    if (LoggerFactory.getILoggerFactory() instanceof LoggerContext journal) {
      journal.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.ERROR);
    }
  }
}
