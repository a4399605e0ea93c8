package org.firnline.logs.table;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Accounts for every line of a body. Like neighbors share one note, so that notes stay few. */
public final class RowLedger {
  private static final int MOST_NOTES = 5_000;
  private static final long NEAR_LINES = 2;

  private final Map<String, Run> open = new HashMap<>();
  private final List<RowNote> notes = new ArrayList<>();
  private long kept;
  private long setAside;
  private long rejected;
  private final BitSet flaggedRows = new BitSet();
  private long unlisted;

  void keep() {
    kept++;
  }

  /** A cell of a kept row is not a good value. */
  public void flag(int row, long line, String column, String reason) {
    flaggedRows.set(row);
    note(line, RowNote.Fate.FLAGGED, column, reason);
  }

  void setAside(long line, String reason) {
    setAside++;
    note(line, RowNote.Fate.SET_ASIDE, "", reason);
  }

  void reject(long line, String reason) {
    rejected++;
    note(line, RowNote.Fate.REJECTED, "", reason);
  }

  private void note(long line, RowNote.Fate fate, String column, String reason) {
    String key = fate + "\0" + column + "\0" + reason;
    Run run = open.get(key);
    if (run != null && line - run.last <= NEAR_LINES) {
      run.last = line;
      run.rows++;
      return;
    }
    if (run != null) {
      close(run);
    }
    open.put(key, new Run(line, fate, column, reason));
  }

  private void close(Run run) {
    if (notes.size() < MOST_NOTES) {
      notes.add(new RowNote(run.first, run.last, run.rows, run.fate, run.column, run.reason));
    } else {
      unlisted++;
    }
  }

  /** What became of the lines. */
  public RowCounts counts() {
    return new RowCounts(
        kept + setAside + rejected, kept, flaggedRows.cardinality(), setAside, rejected);
  }

  /** The notes in line order. */
  public List<RowNote> notes() {
    List<RowNote> all = new ArrayList<>(notes);
    open.values()
        .forEach(
            run ->
                all.add(
                    new RowNote(run.first, run.last, run.rows, run.fate, run.column, run.reason)));
    all.sort(java.util.Comparator.comparingLong(RowNote::firstLine).thenComparing(RowNote::column));
    return all;
  }

  /** Notes beyond the number that is listed. */
  public long unlistedNotes() {
    return unlisted;
  }

  /** A run of lines under one note while the file is read. */
  private static final class Run {
    final long first;
    final RowNote.Fate fate;
    final String column;
    final String reason;
    long last;
    long rows = 1;

    Run(long line, RowNote.Fate fate, String column, String reason) {
      this.first = line;
      this.last = line;
      this.fate = fate;
      this.column = column;
      this.reason = reason;
    }
  }
}
