package org.firnline.logs.table;

import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.LooseCell;
import org.firnline.logs.text.LooseCellReader;
import org.firnline.logs.text.NumberScan;

/**
 * The cells of one row, understood but not yet kept: a row is judged as a whole before it becomes
 * samples. Reused from row to row.
 */
final class RowCells {
  private static final int MOST_REMEMBERED = 5_000;

  private enum State {
    EMPTY,
    NUMBER,
    LOOSE
  }

  private final NumberScan scan;
  private final LooseCellReader loose;
  private final Charset charset;
  private final State[] states;
  private final long[] mantissas;
  private final int[] decimals;
  private final LooseCell[] looseCells;
  private final String[] written;
  private final byte[][] lastBytes;
  private final Map<String, LooseCell> remembered = new HashMap<>();

  RowCells(int columns, char decimalMark, Map<String, Quality> words, Charset charset) {
    this.scan = new NumberScan(decimalMark);
    this.loose = new LooseCellReader(decimalMark, words);
    this.charset = charset;
    this.states = new State[columns];
    this.mantissas = new long[columns];
    this.decimals = new int[columns];
    this.looseCells = new LooseCell[columns];
    this.written = new String[columns];
    this.lastBytes = new byte[columns][];
    Arrays.fill(states, State.EMPTY);
    Arrays.fill(written, "");
    Arrays.fill(lastBytes, new byte[0]);
  }

  /** Understands one cell of a line. */
  void take(Cells cells, int cell, int column) {
    if (cells.isEmpty(cell)) {
      states[column] = State.EMPTY;
      return;
    }
    byte[] buffer = cells.buffer();
    int from = cells.start(cell);
    int to = cells.end(cell);
    if (scan.scan(buffer, from, to)) {
      states[column] = State.NUMBER;
      mantissas[column] = scan.mantissa();
      decimals[column] = scan.decimals();
      return;
    }
    states[column] = State.LOOSE;
    byte[] last = lastBytes[column];
    if (!Arrays.equals(last, 0, last.length, buffer, from, to)) {
      lastBytes[column] = Arrays.copyOfRange(buffer, from, to);
      String text = new String(buffer, from, to - from, charset);
      written[column] = text;
      looseCells[column] = recall(text);
    }
  }

  private LooseCell recall(String text) {
    LooseCell known = remembered.get(text);
    if (known == null) {
      known = loose.read(text);
      if (remembered.size() < MOST_REMEMBERED) {
        remembered.put(text, known);
      }
    }
    return known;
  }

  /** Marks a column as empty in this row. */
  void takeNothing(int column) {
    states[column] = State.EMPTY;
  }

  boolean isEmpty(int column) {
    return states[column] == State.EMPTY;
  }

  boolean isGoodNumber(int column) {
    return states[column] == State.NUMBER
        || (states[column] == State.LOOSE && looseCells[column].kind() == LooseCell.Kind.NUMBER);
  }

  boolean isWord(int column) {
    return states[column] == State.LOOSE && looseCells[column].kind() == LooseCell.Kind.WORD;
  }

  boolean isText(int column) {
    return states[column] == State.LOOSE && looseCells[column].kind() == LooseCell.Kind.TEXT;
  }

  /** The words of a loose cell. */
  String written(int column) {
    return written[column];
  }

  /** What a loose cell says about its sample. */
  Quality quality(int column) {
    return looseCells[column].quality();
  }

  /** Keeps one cell as a sample. */
  void commit(int column, ColumnBuilder builder) {
    switch (states[column]) {
      case EMPTY -> builder.addMissing();
      case NUMBER -> builder.addNumber(mantissas[column], decimals[column]);
      case LOOSE -> builder.addLoose(looseCells[column], written[column]);
    }
  }
}
