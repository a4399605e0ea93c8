package org.firnline.logs;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.firnline.evidence.Problem;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.table.RowCounts;
import org.firnline.logs.table.RowNote;

/** Makes one reading of several: files of one run, sheets of a workbook, tables of a file. */
final class SeveralReadings {
  private final String fileName;
  private final ReadingChoices choices;

  SeveralReadings(String fileName, ReadingChoices choices) {
    this.fileName = fileName;
    this.choices = choices;
  }

  /** The readings as one; those without a log only add their problems. */
  Reading together(List<Reading> readings) {
    List<Reading> readable = readings.stream().filter(r -> r.log().isPresent()).toList();
    if (readable.size() <= 1 && readings.size() == 1) {
      return readings.get(0);
    }
    if (readable.isEmpty()) {
      return LogReader.unreadable(fileName, problems(readings));
    }
    LogJoin.Joined joined =
        new LogJoin()
            .join(
                readable.stream().map(reading -> reading.log().orElseThrow()).toList(),
                choices.clockOffsets());
    Log log = joined.log();
    Log named =
        new Log(fileName, log.time(), log.basis(), log.channels(), log.markers(), log.preamble());
    return new Reading(
        fileName,
        Optional.of(named),
        layout(readable),
        counts(readings, joined.repeated()),
        notes(readings),
        guesses(readable, joined),
        questions(readable),
        problems(readings));
  }

  private Layout layout(List<Reading> readable) {
    Layout first = readable.get(0).layout();
    List<String> header =
        readable.stream().flatMap(r -> r.layout().header().stream()).distinct().toList();
    Set<String> forms = new LinkedHashSet<>();
    readable.forEach(reading -> forms.add(reading.layout().form()));
    return new Layout(
        String.join(", ", forms) + ", " + readable.size() + " parts",
        first.encoding(),
        first.delimiter(),
        first.decimalMark(),
        first.timeRule(),
        first.headerLines(),
        header);
  }

  private static RowCounts counts(List<Reading> readings, int repeated) {
    long kept = readings.stream().mapToLong(r -> r.rows().kept()).sum() - repeated;
    long flagged = readings.stream().mapToLong(r -> r.rows().flagged()).sum();
    long aside = readings.stream().mapToLong(r -> r.rows().setAside()).sum() + repeated;
    long rejected = readings.stream().mapToLong(r -> r.rows().rejected()).sum();
    return new RowCounts(kept + aside + rejected, kept, Math.min(flagged, kept), aside, rejected);
  }

  private boolean isOneFile(List<Reading> readings) {
    return readings.stream().allMatch(reading -> reading.fileName().equals(fileName));
  }

  private List<RowNote> notes(List<Reading> readings) {
    if (isOneFile(readings)) {
      return readings.stream().flatMap(reading -> reading.rowNotes().stream()).toList();
    }
    List<RowNote> notes = new ArrayList<>();
    for (Reading reading : readings) {
      for (RowNote note : reading.rowNotes()) {
        notes.add(
            new RowNote(
                note.firstLine(),
                note.lastLine(),
                note.rows(),
                note.fate(),
                note.column(),
                reading.fileName() + ": " + note.reason()));
      }
    }
    return notes;
  }

  private List<Guess> guesses(List<Reading> readable, LogJoin.Joined joined) {
    Set<Guess> guesses = new LinkedHashSet<>();
    readable.forEach(reading -> guesses.addAll(reading.guesses()));
    if (joined.repeated() > 0) {
      guesses.add(
          new Guess(
              "rows in several files",
              joined.repeated() + " left out",
              "an earlier file already holds them",
              Confidence.HIGH,
              "files"));
    }
    for (ClockOffset offset : joined.offsets()) {
      guesses.add(
          new Guess(
              "clock of " + offset.file() + " against " + offset.against(),
              spoken(offset.ahead()),
              offset.reason(),
              offset.confidence(),
              "clockOffset:" + offset.file()));
    }
    return List.copyOf(guesses);
  }

  private static String spoken(Duration ahead) {
    if (ahead.isZero()) {
      return "0 s: they agree";
    }
    String seconds = String.format(Locale.ROOT, "%.0f s", Math.abs(ahead.toMillis() / 1000.0));
    return seconds + (ahead.isNegative() ? " behind" : " ahead");
  }

  private static List<Question> questions(List<Reading> readable) {
    Set<Question> questions = new LinkedHashSet<>();
    readable.forEach(reading -> questions.addAll(reading.questions()));
    return List.copyOf(questions);
  }

  private static List<Problem> problems(List<Reading> readings) {
    Set<Problem> problems = new LinkedHashSet<>();
    readings.forEach(reading -> problems.addAll(reading.problems()));
    return List.copyOf(problems);
  }
}
