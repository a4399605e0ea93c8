package org.firnline.logs;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.logs.form.Part;
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
  private static final int MOST_TABLES = 50;

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
      if (!Unpacking.isPacked(source)) {
        return readTables(TextSource.plain(fileName, source), choices);
      }
      List<Part> parts = Unpacking.parts(fileName, source);
      List<Reading> readings = new ArrayList<>();
      for (Part part : parts) {
        String name = parts.size() == 1 ? fileName : fileName + " › " + part.name();
        readings.add(readPart(name, part, choices));
      }
      return together(fileName, readings, choices);
    } catch (IOException e) {
      return unreadable(fileName, List.of(cannotRead(fileName, e)));
    }
  }

  private static Problem cannotRead(String fileName, IOException e) {
    String why = e.getMessage() == null ? e.toString() : e.getMessage();
    return new Problem(
        "logs.io",
        "the file cannot be read to its end",
        fileName,
        why,
        "copy or export the file again");
  }

  /**
   * Reads the files of one run: those of one logger one behind the other, those of different
   * loggers side by side on one clock.
   *
   * @param files at least one file
   * @param choices what is already decided, for all of them
   */
  public Reading read(List<GivenLog> files, ReadingChoices choices) {
    if (files.isEmpty()) {
      throw new IllegalArgumentException("no file to read: give at least one");
    }
    if (files.size() == 1) {
      return read(files.get(0).fileName(), files.get(0).bytes(), choices);
    }
    List<Reading> readings =
        files.stream().map(file -> read(file.fileName(), file.bytes(), choices)).toList();
    String name = files.get(0).fileName() + " and " + (files.size() - 1) + " more";
    return new SeveralReadings(name, choices).together(readings);
  }

  private Reading readPart(String name, Part part, ReadingChoices choices) throws IOException {
    return part.isSheet()
        ? readTables(
            TextSource.rewritten(name, TextSource.SHEET, part.text(), List.of(), 1),
            choices.forRewritten())
        : readTables(TextSource.plain(name, part.text()), choices);
  }

  /** Readings of parts: what holds no table beside one that does is passed over. */
  private static Reading together(String fileName, List<Reading> readings, ReadingChoices choices) {
    boolean any = readings.stream().anyMatch(reading -> reading.log().isPresent());
    List<Reading> used =
        any
            ? readings.stream()
                .filter(reading -> reading.log().isPresent() || !holdsNothing(reading))
                .toList()
            : readings;
    return new SeveralReadings(fileName, choices).together(used);
  }

  private static boolean holdsNothing(Reading reading) {
    return reading.problems().stream().allMatch(problem -> problem.code().equals("logs.empty"));
  }

  /** Reads a table and those that begin below it under other headings. */
  private Reading readTables(TextSource text, ReadingChoices choices) throws IOException {
    List<Reading> readings = new ArrayList<>();
    TableReading.Found found = new TableReading(text, choices, units, vocabulary).read();
    readings.add(found.reading());
    while (found.nextTableLine() > 0 && readings.size() < MOST_TABLES) {
      TextSource rest = text.from(found.nextTableLine(), found.encoding());
      found = new TableReading(rest, choices, units, vocabulary).read();
      readings.add(found.reading());
    }
    if (found.nextTableLine() > 0) {
      readings.add(
          unreadable(
              text.fileName(),
              List.of(
                  new Problem(
                      "logs.tables",
                      "the file holds more than " + MOST_TABLES + " tables",
                      text.fileName() + " line " + found.nextTableLine(),
                      "what follows was not read",
                      "give the tables as files of their own"))));
    }
    return new SeveralReadings(text.fileName(), choices).together(readings);
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

  static Reading unreadable(String fileName, List<Problem> problems) {
    return new Reading(
        fileName,
        Optional.empty(),
        new Layout("unknown", "", "", "", "", List.of(), List.of()),
        new RowCounts(0, 0, 0, 0, 0),
        List.of(),
        List.of(),
        List.of(),
        problems);
  }
}
