package org.firnline.logs.layout;

import java.nio.charset.Charset;
import java.util.Map;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.LooseCell;
import org.firnline.logs.text.LooseCellReader;
import org.firnline.logs.text.NumberScan;

/** Tells numbers, stamps, words and text apart under one decimal mark. */
final class CellSorter {
  private final NumberScan numbers;
  private final LooseCellReader loose;
  private final StampScan stamps;
  private final char decimalMark;
  private boolean fractionSeen;

  CellSorter(char decimalMark, Map<String, Quality> words, StampScan stamps) {
    this.decimalMark = decimalMark;
    this.numbers = new NumberScan(decimalMark);
    this.loose = new LooseCellReader(decimalMark, words);
    this.stamps = stamps;
  }

  CellKind kindOf(Cells cells, int cell, Charset charset) {
    if (cells.isEmpty(cell)) {
      return CellKind.EMPTY;
    }
    int from = cells.start(cell);
    int to = cells.end(cell);
    if (numbers.scan(cells.buffer(), from, to)) {
      noteFraction(cells, from, to);
      return CellKind.NUMBER;
    }
    if (stamps.scan(cells.buffer(), from, to).kind() != Stamp.Kind.NONE) {
      return CellKind.STAMP;
    }
    LooseCell found = loose.read(cells.text(cell, charset));
    return switch (found.kind()) {
      case NUMBER -> CellKind.NUMBER;
      case WORD -> CellKind.WORD;
      case TEXT -> CellKind.TEXT;
    };
  }

  /**
   * Whether a cell is a plain number under this decimal mark, which is stronger than a loose one.
   */
  boolean isPlainNumber(Cells cells, int cell) {
    return !cells.isEmpty(cell) && numbers.scan(cells.buffer(), cells.start(cell), cells.end(cell));
  }

  /**
   * Whether a number has only the mark that is not the decimal mark here: "68,798" under a point.
   */
  boolean hasOnlyOtherMark(Cells cells, int cell) {
    byte other = (byte) (decimalMark == '.' ? ',' : '.');
    boolean seen = false;
    for (int i = cells.start(cell); i < cells.end(cell); i++) {
      if (cells.buffer()[i] == decimalMark) {
        return false;
      }
      seen |= cells.buffer()[i] == other;
    }
    return seen;
  }

  /** Whether a cell holds a date and a clock time. */
  boolean isDateAndClock(Cells cells, int cell) {
    return stamps.scan(cells.buffer(), cells.start(cell), cells.end(cell)).kind()
        == Stamp.Kind.DATE_TIME;
  }

  private void noteFraction(Cells cells, int from, int to) {
    for (int i = from; i < to && !fractionSeen; i++) {
      fractionSeen = cells.buffer()[i] == decimalMark;
    }
  }

  boolean fractionSeen() {
    return fractionSeen;
  }
}
