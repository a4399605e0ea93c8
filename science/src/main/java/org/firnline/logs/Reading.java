package org.firnline.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.logs.table.RowCounts;
import org.firnline.logs.table.RowNote;

/**
 * The answer to "read this file": the log if it could be read, and the whole account of how.
 *
 * @param fileName name of the file as given
 * @param log the log; empty if the file cannot be read, then {@code problems} says why
 * @param layout encoding, delimiter, decimal mark, time rule, header rows
 * @param rows how many rows were read, kept, flagged, set aside, rejected
 * @param rowNotes which lines were flagged, set aside or rejected, and why
 * @param guesses everything that was not certain, with its reason
 * @param questions what only a person can settle
 * @param problems what is wrong, where, and what to do
 */
public record Reading(
    String fileName,
    Optional<Log> log,
    Layout layout,
    RowCounts rows,
    List<RowNote> rowNotes,
    List<Guess> guesses,
    List<Question> questions,
    List<Problem> problems) {

  public Reading {
    Objects.requireNonNull(fileName, "fileName");
    Objects.requireNonNull(log, "log");
    Objects.requireNonNull(layout, "layout");
    Objects.requireNonNull(rows, "rows");
    rowNotes = List.copyOf(rowNotes);
    guesses = List.copyOf(guesses);
    questions = List.copyOf(questions);
    problems = List.copyOf(problems);
    if (log.isEmpty() && problems.isEmpty()) {
      throw new IllegalArgumentException(
          "reading of " + fileName + ": no log and no problem; say why the file cannot be read");
    }
  }

  /** The same reading of a file that is laid out otherwise. */
  Reading withLayout(Layout other) {
    return new Reading(fileName, log, other, rows, rowNotes, guesses, questions, problems);
  }

  /** The same reading with guesses made before it, unless it made its own about the same. */
  Reading after(List<Guess> earlier) {
    List<Guess> all = new ArrayList<>(earlier);
    all.removeIf(known -> guesses.stream().anyMatch(own -> own.what().equals(known.what())));
    all.addAll(guesses);
    return new Reading(fileName, log, layout, rows, rowNotes, all, questions, problems);
  }

  /** The same reading with one more problem. */
  Reading with(Problem problem) {
    List<Problem> all = new ArrayList<>(problems);
    all.add(problem);
    return new Reading(fileName, log, layout, rows, rowNotes, guesses, questions, all);
  }
}
