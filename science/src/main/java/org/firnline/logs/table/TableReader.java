package org.firnline.logs.table;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.layout.ColumnKind;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.TableShape;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.Lines;
import org.firnline.logs.text.LooseCellReader;
import org.firnline.logs.text.NumberScan;

/**
 * Reads the body of a table line by line. Each line is first understood, then judged: a sample, a
 * mark in words, a repeated header, a line of statistics, or unusable.
 */
public final class TableReader {
  private static final int MOST_MARKS = 20_000;
  private static final String NO_TIME = "no time where one is expected";

  private final TableShape shape;
  private final List<String> names;
  private final RowWords rowWords = new RowWords();
  private final Set<String> headerTexts;
  private final Set<String> preambleTexts;
  private final HeaderWatch headerWatch;
  private final int[] measured;
  private final boolean[] holdsNumbers;
  private final boolean anyNumbers;
  private final Cells cells;
  private final RowCells row;
  private final TimeCells time;
  private final List<ColumnBuilder> builders = new ArrayList<>();
  private final LineNumbers lineNumbers = new LineNumbers();
  private final RowLedger ledger = new RowLedger();
  private final List<LineMark> marks = new ArrayList<>();

  /**
   * A reader for one table.
   *
   * @param shape where the table stands and what it holds
   * @param plan which columns hold the time
   * @param names the columns' headings, for notes
   * @param charset character set of the lines
   * @param isHeading whether cells of a line can be the headings of another table
   */
  public TableReader(
      TableShape shape,
      TimePlan plan,
      List<String> names,
      Charset charset,
      Predicate<List<String>> isHeading) {
    Map<String, Quality> words = CellWords.load();
    char mark = shape.dialect().decimalMark();
    this.shape = shape;
    this.names = List.copyOf(names);
    this.headerTexts = texts(shape.headerLines());
    this.preambleTexts = texts(shape.preamble());
    this.headerWatch = new HeaderWatch(mark, charset, isHeading);
    this.cells = new Cells(shape.dialect().delimiter());
    this.row = new RowCells(shape.columns(), mark, words, charset);
    this.time =
        new TimeCells(plan, charset, new NumberScan(mark), new LooseCellReader(mark, words));
    this.measured =
        IntStream.range(0, shape.columns()).filter(i -> !plan.columns().contains(i)).toArray();
    this.holdsNumbers = new boolean[shape.columns()];
    for (int i = 0; i < shape.columns(); i++) {
      builders.add(new ColumnBuilder());
      holdsNumbers[i] = shape.kinds().get(i) == ColumnKind.NUMBER;
    }
    this.anyNumbers = shape.kinds().contains(ColumnKind.NUMBER);
  }

  private static Set<String> texts(List<SampleLine> lines) {
    return lines.stream().map(SampleLine::text).map(String::strip).collect(Collectors.toSet());
  }

  /**
   * Reads from the first line of the body to the end of the file, or to the heading of another
   * table.
   */
  public TableContents read(Lines lines) throws IOException {
    long unfinished = 0;
    while (lines.advance()) {
      if (lines.number() < shape.bodyStart()) {
        continue;
      }
      boolean blank = isBlank(lines);
      if (!blank && !lines.terminated() && isCutShort(lines)) {
        unfinished = lines.number();
      } else if (!blank) {
        readLine(lines);
        if (headerWatch.sawTable()) {
          break;
        }
      }
    }
    headerWatch.settle();
    return new TableContents(
        builders, time, lineNumbers, ledger, marks, unfinished, headerWatch.tableLine());
  }

  private static boolean isBlank(Lines lines) {
    for (int i = lines.from(); i < lines.to(); i++) {
      byte b = lines.buffer()[i];
      if (b > ' ' || b < 0) {
        return false;
      }
    }
    return true;
  }

  /** An unterminated last line may still be growing: it counts only if it has all its cells. */
  private boolean isCutShort(Lines lines) {
    cells.split(lines.buffer(), lines.from(), lines.to());
    return cells.count() < shape.usualCells();
  }

  private void readLine(Lines lines) {
    byte first = firstByte(lines);
    if ((first == '#' && !headerTexts.contains(lines.text().strip()))
        || (first == '/' && lines.text().strip().startsWith("//"))) {
      String text = lines.text().strip().replaceFirst("^(#|//)+\\s*", "");
      setAside(lines, rowWords.kindOf(text, LineMark.Kind.COMMENT), text);
      return;
    }
    cells.split(lines.buffer(), lines.from(), lines.to());
    if (headerWatch.isWaiting() && headerWatch.confirms(cells)) {
      return;
    }
    if (cells.count() > shape.columns() && hasMoreThanColumns()) {
      readLong(lines);
    } else if (!time.take(cells)) {
      readTimeless(lines);
    } else if (cells.count() < shape.usualCells()) {
      readShort(lines);
    } else {
      readRow(lines);
    }
  }

  private static byte firstByte(Lines lines) {
    int i = lines.from();
    while (i < lines.to() && lines.buffer()[i] == ' ') {
      i++;
    }
    return lines.buffer()[i];
  }

  private boolean hasMoreThanColumns() {
    for (int i = shape.columns(); i < cells.count(); i++) {
      if (!cells.isEmpty(i)) {
        return true;
      }
    }
    return false;
  }

  private void readLong(Lines lines) {
    String reason = cells.count() + " cells where the table has " + shape.columns();
    long line = lines.number();
    if (!headerWatch.suspects(cells, line, () -> ledger.reject(line, reason))) {
      ledger.reject(line, reason);
    }
  }

  private void readTimeless(Lines lines) {
    String text = lines.text().strip();
    long line = lines.number();
    LineMark.Kind kind = rowWords.kindOf(firstText(lines), LineMark.Kind.RESTART);
    if (headerTexts.contains(text)) {
      setAside(lines, LineMark.Kind.RESTART, "the header stands here again");
    } else if (rowWords.isStatistics(firstText(lines))) {
      setAside(lines, LineMark.Kind.STATISTICS, text);
    } else if (preambleTexts.contains(text) || isRuler(text)) {
      setAside(lines, LineMark.Kind.STATISTICS, text);
    } else if (headerWatch.suspects(cells, line, () -> ledger.reject(line, NO_TIME))) {
      return; // settled by the lines that follow
    } else if (kind != LineMark.Kind.RESTART && kind != LineMark.Kind.STATISTICS) {
      setAside(lines, kind, text.replaceAll("[;,|\\t]+", " ").strip());
    } else {
      ledger.reject(line, NO_TIME);
    }
  }

  /** A line of dashes or the like only parts what is above from what is below. */
  private static boolean isRuler(String text) {
    return text.chars().allMatch(c -> "-=_*+|~;,\t ".indexOf(c) >= 0);
  }

  private String firstText(Lines lines) {
    for (int i = 0; i < cells.count(); i++) {
      if (!cells.isEmpty(i)) {
        return cells.text(i, lines.charset());
      }
    }
    return "";
  }

  /** A moment and words with no number beside them are an event; else cells are missing. */
  private void readShort(Lines lines) {
    StringBuilder words = new StringBuilder();
    boolean onlyWords = true;
    for (int i : measured) {
      if (i < cells.count() && !cells.isEmpty(i)) {
        row.take(cells, i, i);
        onlyWords &= row.isText(i);
        words.append(words.isEmpty() ? "" : " ").append(cells.text(i, lines.charset()));
      }
    }
    if (onlyWords && !words.isEmpty() && anyNumbers) {
      String text = words.toString();
      setAside(lines, rowWords.kindOf(text, LineMark.Kind.EVENT), text);
      return;
    }
    ledger.reject(
        lines.number(),
        "only "
            + cells.count()
            + " of "
            + shape.usualCells()
            + " cells: the line is cut off or two lines ran together");
  }

  private void readRow(Lines lines) {
    int good = 0;
    int words = 0;
    int texts = 0;
    boolean misplaced = false;
    for (int i : measured) {
      row.take(cells, i, i);
      if (row.isGoodNumber(i)) {
        good++;
      } else if (row.isText(i)) {
        texts++;
        misplaced |= holdsNumbers[i];
      } else if (row.isWord(i) && holdsNumbers[i]) {
        words++;
      }
    }
    if (good == 0 && texts > 0 && anyNumbers && (words == 0 || misplaced)) {
      String text = joinedTexts();
      setAside(lines, rowWords.kindOf(text, LineMark.Kind.EVENT), text);
      return;
    }
    keep(lines.number());
  }

  private String joinedTexts() {
    StringBuilder text = new StringBuilder();
    for (int i : measured) {
      if (row.isText(i) || row.isWord(i)) {
        text.append(text.isEmpty() ? "" : " ").append(row.written(i));
      }
    }
    return text.toString();
  }

  private void keep(long line) {
    ledger.keep();
    lineNumbers.add(line);
    time.keep();
    for (int i : measured) {
      row.commit(i, builders.get(i));
      if (holdsNumbers[i] && !row.isGoodNumber(i)) {
        ledger.flag(lineNumbers.size() - 1, line, names.get(i), reason(i));
      }
    }
  }

  private String reason(int column) {
    if (row.isEmpty(column)) {
      return "missing: the cell is empty";
    }
    String label = row.quality(column).label();
    return String.format(Locale.ROOT, "%s: the cell reads \"%s\"", label, row.written(column));
  }

  private void setAside(Lines lines, LineMark.Kind kind, String text) {
    ledger.setAside(lines.number(), kind.name().toLowerCase(Locale.ROOT) + ": " + shortened(text));
    if (marks.size() < MOST_MARKS) {
      marks.add(new LineMark(lineNumbers.size(), lines.number(), kind, text));
    }
  }

  private static String shortened(String text) {
    return text.length() <= 120 ? text : text.substring(0, 120) + " …";
  }
}
