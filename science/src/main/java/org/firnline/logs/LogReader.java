package org.firnline.logs;

import java.util.List;
import java.util.Optional;

/**
 * Reads any dryer's log. Stateless: the same bytes and choices give the same reading. Never throws
 * for the sake of what a file holds; an unreadable file is a reading with problems and no log.
 */
public final class LogReader {

  /** Reads a file with nothing decided beforehand. */
  public Reading read(String fileName, byte[] bytes) {
    return read(fileName, bytes, ReadingChoices.none());
  }

  /**
   * Reads a file.
   *
   * @param fileName name of the file; shown, and a hint to its form
   * @param bytes the whole file as it was kept
   * @param choices what is already decided
   */
  public Reading read(String fileName, byte[] bytes, ReadingChoices choices) {
    return new Reading(
        fileName,
        Optional.empty(),
        new Layout("", "", "", "", "", List.of(), List.of()),
        new RowCounts(0, 0, 0, 0, 0),
        List.of(),
        List.of(),
        List.of(),
        List.of(new ReadingProblem("not read yet", 0, "wait for the reader")));
  }
}
