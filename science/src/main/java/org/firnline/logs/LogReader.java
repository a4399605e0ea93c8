package org.firnline.logs;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.logs.form.Unpacking;
import org.firnline.logs.layout.UnitSpellings;
import org.firnline.logs.layout.Vocabulary;
import org.firnline.logs.table.RowCounts;
import org.firnline.logs.text.ByteSource;

/**
 * Reads any dryer's log. Stateless: the same bytes and choices give the same reading. Never throws
 * for the sake of what a file holds; an unreadable file is a reading with problems and no log.
 */
public final class LogReader {
  private final UnitSpellings units = new UnitSpellings();
  private final Vocabulary vocabulary = new Vocabulary();

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
    return read(fileName, () -> new ByteArrayInputStream(bytes), choices);
  }

  /**
   * Reads a file that need not fit in memory.
   *
   * @param fileName name of the file; shown, and a hint to its form
   * @param source its bytes; opened a few times
   * @param choices what is already decided
   */
  public Reading read(String fileName, ByteSource source, ReadingChoices choices) {
    try {
      if (Unpacking.isPacked(source)) {
        byte[] unpacked = Unpacking.unpack(source);
        return readPlain(fileName, () -> new ByteArrayInputStream(unpacked), choices);
      }
      return readPlain(fileName, source, choices);
    } catch (IOException e) {
      String why = e.getMessage() == null ? e.toString() : e.getMessage();
      return unreadable(
          fileName,
          new Problem(
              "logs.io",
              "the file cannot be read to its end",
              fileName,
              why,
              "copy or export the file again"));
    }
  }

  /**
   * Reads a file by what was settled for its source. Where the header has changed, choices about
   * columns are left aside, and a problem tells the changes.
   *
   * @param fileName name of the file
   * @param bytes the whole file
   * @param profile what was settled
   */
  public Reading read(String fileName, byte[] bytes, ReadingProfile profile) {
    Reading reading = read(fileName, bytes, profile.choices());
    List<String> changes = profile.changes(reading.layout().header());
    if (changes.isEmpty()) {
      return reading;
    }
    return read(fileName, bytes, profile.withoutColumns())
        .with(
            new Problem(
                "logs.header-changed",
                "the header has changed: " + String.join(", ", changes),
                fileName,
                "choices about columns hold for the header they were made for",
                "look at roles and units again"));
  }

  private Reading readPlain(String fileName, ByteSource source, ReadingChoices choices)
      throws IOException {
    return new TableReading(fileName, source, choices, units, vocabulary, "delimited").read();
  }

  static Reading unreadable(String fileName, Problem problem) {
    return new Reading(
        fileName,
        Optional.empty(),
        new Layout("unknown", "", "", "", "", List.of(), List.of()),
        new RowCounts(0, 0, 0, 0, 0),
        List.of(),
        List.of(),
        List.of(),
        List.of(problem));
  }
}
