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

  private FixedWidth(int[] from, int[] to) {
    this.from = from;
    this.to = to;
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
        found.stream().mapToInt(c -> c[0]).toArray(), found.stream().mapToInt(c -> c[1]).toArray());
  }

  /** Whether a line keeps to the columns: nothing between them, no blanks inside of a cell. */
  public boolean fits(String line) {
    int column = 0;
    for (int i = 0; i < line.length(); i++) {
      if (line.charAt(i) == ' ') {
        continue;
      }
      while (column < to.length && i >= to[column]) {
        column++;
      }
      if (column == to.length || i < from[column]) {
        return false;
      }
    }
    for (String cell : cut(line)) {
      if (cell.indexOf(' ') >= 0) {
        return false;
      }
    }
    return true;
  }

  /** The cells of a line that keeps to the columns. */
  public List<String> cut(String line) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < from.length; i++) {
      int start = Math.min(from[i], line.length());
      int end = i + 1 == from.length ? line.length() : Math.min(to[i], line.length());
      cells.add(line.substring(start, Math.max(start, end)).strip());
    }
    return cells;
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
