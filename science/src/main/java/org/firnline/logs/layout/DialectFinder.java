package org.firnline.logs.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.text.Cells;

/**
 * Decides delimiter and decimal mark together: the pair that gives a constant number of cells and
 * the most numbers and stamps.
 */
final class DialectFinder {
  private static final char[] DELIMITERS = {';', '\t', ',', '|', ' '};
  private static final char[] MARKS = {'.', ','};
  private static final double LOOSE_NUMBER = 0.6;
  private static final double OTHERWISE_MARKED_NUMBER = 0.4;
  private static final double SPACES_ARE_LESS_LIKELY = 0.9;

  private final Map<String, Quality> words;
  private final StampScan stamps;

  DialectFinder(Map<String, Quality> words, StampScan stamps) {
    this.words = words;
    this.stamps = stamps;
  }

  /** The best pair, among the decided ones if something is decided; empty if nothing fits. */
  Optional<Dialect> find(
      List<SampleLine> lines, Optional<Character> delimiter, Optional<Character> decimalMark) {
    Dialect best = null;
    double bestScore = 0;
    double secondScore = 0;
    for (char candidate : DELIMITERS) {
      if (delimiter.isPresent() && delimiter.get() != candidate) {
        continue;
      }
      int columns = usualCount(lines, candidate);
      double bestOfDelimiter = 0;
      for (char mark : MARKS) {
        if (decimalMark.isPresent() && decimalMark.get() != mark) {
          continue;
        }
        CellSorter sorter = new CellSorter(mark, words, stamps);
        double score = score(lines, candidate, columns, sorter);
        bestOfDelimiter = Math.max(bestOfDelimiter, score);
        if (score > bestScore) {
          secondScore = bestOfDelimiter == score ? secondScore : bestScore;
          bestScore = score;
          best = dialect(candidate, mark, columns, sorter.fractionSeen(), score, secondScore);
        }
      }
      if (best != null && best.delimiter() != candidate) {
        secondScore = Math.max(secondScore, bestOfDelimiter);
      }
    }
    return Optional.ofNullable(best);
  }

  private static Dialect dialect(
      char delimiter, char mark, int columns, boolean fractions, double score, double second) {
    String reason = "this pair gives " + columns + " cells in most lines and the most numbers";
    Confidence confidence = second < 0.7 * score ? Confidence.HIGH : Confidence.MEDIUM;
    return new Dialect(delimiter, mark, fractions, reason, confidence);
  }

  /** A stamp with date and clock is worth both, or blanks inside it would pay as delimiters. */
  private static double weight(CellKind kind, Cells cells, int cell, CellSorter sorter) {
    if (kind == CellKind.STAMP) {
      return sorter.isDateAndClock(cells, cell) ? 2 : 1;
    }
    if (sorter.isPlainNumber(cells, cell)) {
      return 1;
    }
    if (kind != CellKind.NUMBER) {
      return 0;
    }
    return sorter.hasOnlyOtherMark(cells, cell) ? OTHERWISE_MARKED_NUMBER : LOOSE_NUMBER;
  }

  static int usualCount(List<SampleLine> lines, char delimiter) {
    Map<Integer, Integer> counts = new HashMap<>();
    Cells cells = new Cells(delimiter);
    for (SampleLine line : lines) {
      if (!line.isBlank()) {
        line.splitWith(cells);
        counts.merge(cells.count(), 1, Integer::sum);
      }
    }
    return counts.entrySet().stream()
        .max(
            Map.Entry.<Integer, Integer>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey()))
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  private static double score(
      List<SampleLine> lines, char delimiter, int columns, CellSorter sorter) {
    Cells cells = new Cells(delimiter);
    double measured = 0;
    int usual = 0;
    int all = 0;
    for (SampleLine line : lines) {
      if (line.isBlank()) {
        continue;
      }
      all++;
      line.splitWith(cells);
      if (cells.count() != columns) {
        continue;
      }
      usual++;
      for (int i = 0; i < cells.count(); i++) {
        CellKind kind = sorter.kindOf(cells, i, line.charset());
        measured += weight(kind, cells, i, sorter);
      }
    }
    double likely = delimiter == ' ' ? SPACES_ARE_LESS_LIKELY : 1;
    return all == 0 ? 0 : likely * measured * usual / all;
  }
}
