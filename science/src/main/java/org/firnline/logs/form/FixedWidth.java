package org.firnline.logs.form;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * A table whose columns stand at fixed places, parted by blanks. Told by places that are blank in
 * all rows; a blank cell then stays in its column.
 */
public final class FixedWidth {
  private static final int FEWEST_ROWS = 2;
  private static final double NEARLY_ALL = 0.98;

  private final int[] from;
  private final int[] to;

  /** The column whose cells hold blanks, as merged stamps do; -1 if none. */
  private final int spaced;

  private FixedWidth(int[] from, int[] to, int spaced) {
    this.from = from;
    this.to = to;
    this.spaced = spaced;
  }

  /**
   * The columns of a table by its rows; empty if its rows do not stand in columns.
   *
   * @param rows lines of the body
   */
  public static Optional<FixedWidth> of(List<String> rows) {
    int widest = rows.stream().mapToInt(String::length).max().orElse(0);
    if (rows.size() < FEWEST_ROWS || widest > 4_000) {
      return Optional.empty();
    }
    int[] inked = new int[widest];
    for (String row : rows) {
      for (int i = 0; i < row.length(); i++) {
        inked[i] += row.charAt(i) == ' ' ? 0 : 1;
      }
    }
    BitSet ink = new BitSet();
    for (int i = 0; i < widest; i++) {
      ink.set(i, inked[i] > (1 - NEARLY_ALL) * rows.size());
    }
    FixedWidth found = columns(ink, widest);
    long sound = rows.stream().filter(found::fits).count();
    boolean enough = found.from.length > 1 && sound >= NEARLY_ALL * rows.size();
    return enough ? Optional.of(found) : Optional.empty();
  }

  private static FixedWidth columns(BitSet ink, int widest) {
    List<int[]> found = new ArrayList<>();
    for (int i = ink.nextSetBit(0); i >= 0 && i < widest; i = ink.nextSetBit(i)) {
      int end = ink.nextClearBit(i);
      found.add(new int[] {i, end});
      i = end;
    }
    return new FixedWidth(
        found.stream().mapToInt(c -> c[0]).toArray(),
        found.stream().mapToInt(c -> c[1]).toArray(),
        -1);
  }

  /** Number of columns. */
  public int columns() {
    return from.length;
  }

  /** The same table where some neighboring columns are one, such as a day, a month and a year. */
  public FixedWidth merged(int first, int count) {
    List<Integer> starts = new ArrayList<>();
    List<Integer> ends = new ArrayList<>();
    for (int i = 0; i < from.length; i++) {
      if (i <= first || i >= first + count) {
        starts.add(from[i]);
        ends.add(to[i]);
      } else {
        ends.set(first, to[i]);
      }
    }
    int[] mergedEnds = ends.stream().mapToInt(Integer::intValue).toArray();
    return new FixedWidth(starts.stream().mapToInt(Integer::intValue).toArray(), mergedEnds, first);
  }

  /** Whether a line keeps to the columns: a blank between any two, no blanks inside of a cell. */
  public boolean fits(String line) {
    int start = 0;
    for (int i = 0; i < from.length; i++) {
      int end = endOf(i, line);
      boolean parted = end >= 0 && line.substring(start, end).strip().indexOf(' ') >= 0;
      if (end < 0 || (parted && i != spaced)) {
        return false;
      }
      start = end;
    }
    return true;
  }

  /** The cells of a line that keeps to the columns. */
  public List<String> cut(String line) {
    List<String> cells = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < from.length; i++) {
      int end = endOf(i, line);
      String cell = line.substring(start, end).strip();
      cells.add(i == spaced ? cell.replaceAll(" +", " ") : cell);
      start = end;
    }
    return cells;
  }

  /** Where a column ends in a line: at the first blank behind its usual end; -1 if none follows. */
  private int endOf(int column, String line) {
    if (column + 1 == from.length) {
      return line.length();
    }
    for (int i = to[column]; i < from[column + 1]; i++) {
      if (i >= line.length() || line.charAt(i) == ' ') {
        return Math.min(i, line.length());
      }
    }
    return -1;
  }

  /** The cells of a heading: each run of words goes to the column it stands over. */
  public List<String> cutHeading(String line) {
    List<StringBuilder> cells = new ArrayList<>();
    for (int i = 0; i < from.length; i++) {
      cells.add(new StringBuilder());
    }
    int at = 0;
    while (at < line.length()) {
      if (line.charAt(at) == ' ') {
        at++;
        continue;
      }
      int end = line.indexOf(' ', at);
      end = end < 0 ? line.length() : end;
      StringBuilder cell = cells.get(nearest(at, end));
      cell.append(cell.isEmpty() ? "" : " ").append(line, at, end);
      at = end;
    }
    return cells.stream().map(StringBuilder::toString).toList();
  }

  /** The column with the largest share in a range, or the one whose edge is nearest to it. */
  private int nearest(int start, int end) {
    int best = 0;
    int bestScore = Integer.MIN_VALUE;
    for (int i = 0; i < from.length; i++) {
      int shared = Math.min(end, to[i]) - Math.max(start, from[i]);
      int score = shared > 0 ? 10_000 + shared : shared;
      if (score > bestScore) {
        best = i;
        bestScore = score;
      }
    }
    return best;
  }
}
