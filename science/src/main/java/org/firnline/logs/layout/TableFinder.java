package org.firnline.logs.layout;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.text.CellWords;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.NumberScan;

/**
 * Finds the table in the head of a file: delimiter and decimal mark, the first line of the body,
 * the header rows above it, what each column mostly holds.
 */
public final class TableFinder {
  private static final int MOST_HEADER_LINES = 4;
  private static final double AGREEING_SHARE = 0.75;

  private final UnitSpellings units;
  private final Map<String, Quality> words = CellWords.load();

  /** A finder that knows units by these spellings. */
  public TableFinder(UnitSpellings units) {
    this.units = units;
  }

  /**
   * Finds the table.
   *
   * @param lines head of the file
   * @param charset its character set
   * @param delimiter delimiter if decided
   * @param decimalMark decimal mark if decided
   */
  public Optional<TableShape> find(
      List<SampleLine> lines,
      Charset charset,
      Optional<Character> delimiter,
      Optional<Character> decimalMark) {
    StampScan stamps = new StampScan(charset);
    List<SampleLine> spoken = lines.stream().filter(line -> !isRemark(line)).toList();
    return new DialectFinder(words, stamps)
        .find(spoken, delimiter, decimalMark)
        .flatMap(dialect -> shape(lines, dialect, stamps));
  }

  /** Whether a line is a remark by its first sign. */
  public static boolean isRemark(SampleLine line) {
    String text = line.text().stripLeading();
    boolean heading = text.matches("#[\\s\"]*[;,\\t|].*"); // "#" as the name of a column
    return (text.startsWith("#") && !heading) || text.startsWith("//");
  }

  /** Whether a line only announces the delimiter, such as "sep=;". */
  public static boolean isAnnouncement(SampleLine line) {
    String text = line.text().replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT);
    return text.matches("\"?sep=.?\"?.?");
  }

  private Optional<TableShape> shape(List<SampleLine> lines, Dialect dialect, StampScan stamps) {
    List<SampleLine> spoken = lines.stream().filter(line -> !isRemark(line)).toList();
    int usual = DialectFinder.usualCount(spoken, dialect.delimiter());
    Cells cells = new Cells(dialect.delimiter());
    CellSorter sorter = new CellSorter(dialect.decimalMark(), words, stamps);
    List<ColumnKind> kinds = kinds(spoken, cells, usual, sorter, stamps);
    if (kinds.stream().noneMatch(kind -> kind == ColumnKind.NUMBER)) {
      return Optional.empty();
    }
    for (int i = 0; i < lines.size(); i++) {
      if (!isRemark(lines.get(i)) && isBody(lines.get(i), cells, kinds, sorter)) {
        return Optional.of(shapeFrom(lines, i, dialect, usual, kinds, cells, sorter));
      }
    }
    return Optional.empty();
  }

  private TableShape shapeFrom(
      List<SampleLine> lines,
      int body,
      Dialect dialect,
      int usual,
      List<ColumnKind> kinds,
      Cells cells,
      CellSorter sorter) {
    int top = body;
    while (top > 0
        && body - top < MOST_HEADER_LINES
        && isHeader(lines.get(top - 1), cells, usual, sorter)) {
      top--;
    }
    List<SampleLine> header = new ArrayList<>(lines.subList(top, body));
    List<SampleLine> preamble = new ArrayList<>(lines.subList(0, top));
    if (header.isEmpty()) {
      detached(preamble, cells, usual, sorter)
          .ifPresent(
              line -> {
                header.add(line);
                preamble.removeIf(other -> other.number() == line.number());
              });
    }
    int columns = usual;
    for (SampleLine line : header) {
      line.splitWith(cells);
      columns = Math.max(columns, cells.count());
    }
    boolean unitLine = header.size() > 1 && isUnitLine(header.get(header.size() - 1), cells);
    List<ColumnKind> allKinds = new ArrayList<>(kinds);
    while (allKinds.size() < columns) {
      allKinds.add(ColumnKind.TEXT);
    }
    return new TableShape(
        dialect,
        columns,
        usual,
        header,
        unitLine,
        lines.get(body).number(),
        preamble,
        allKinds,
        grows(lines.subList(body, lines.size()), cells, dialect.decimalMark()));
  }

  /** A heading that remarks or blank lines part from the body, or that is itself a remark. */
  private Optional<SampleLine> detached(
      List<SampleLine> above, Cells cells, int usual, CellSorter sorter) {
    for (int i = above.size() - 1; i >= Math.max(0, above.size() - MOST_HEADER_LINES); i--) {
      SampleLine line = above.get(i).withoutRemarkSign();
      line.splitWith(cells);
      boolean whole = cells.count() >= usual && usual > 1;
      if (whole && isHeader(line, cells, usual, sorter)) {
        return Optional.of(line);
      }
      if (whole) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static boolean grows(List<SampleLine> body, Cells cells, char decimalMark) {
    NumberScan scan = new NumberScan(decimalMark);
    double before = Double.NEGATIVE_INFINITY;
    int seen = 0;
    for (SampleLine line : body) {
      line.splitWith(cells);
      if (!cells.isEmpty(0) && scan.scan(cells.buffer(), cells.start(0), cells.end(0))) {
        double value = scan.value();
        if (value <= before) {
          return false;
        }
        before = value;
        seen++;
      }
    }
    return seen > 1;
  }

  private static List<ColumnKind> kinds(
      List<SampleLine> lines, Cells cells, int usual, CellSorter sorter, StampScan stamps) {
    int[][] votes = new int[usual][ColumnKind.values().length];
    int seen = 0;
    for (SampleLine line : lines) {
      line.splitWith(cells);
      if (line.isBlank() || cells.count() != usual) {
        continue;
      }
      seen++;
      for (int i = 0; i < usual; i++) {
        vote(votes[i], cells, i, line.charset(), sorter, stamps);
      }
    }
    List<ColumnKind> kinds = new ArrayList<>();
    for (int[] vote : votes) {
      kinds.add(elected(vote, seen));
    }
    return kinds;
  }

  private static void vote(
      int[] votes, Cells cells, int i, Charset charset, CellSorter sorter, StampScan stamps) {
    ColumnKind kind =
        switch (sorter.kindOf(cells, i, charset)) {
          case NUMBER -> compactDate(cells, i, stamps);
          case STAMP -> stampKind(stamps.scan(cells.buffer(), cells.start(i), cells.end(i)));
          case TEXT -> ColumnKind.TEXT;
          case EMPTY, WORD -> ColumnKind.EMPTY;
        };
    votes[position(kind)]++;
  }

  private static int position(ColumnKind kind) {
    return List.of(ColumnKind.values()).indexOf(kind);
  }

  private static ColumnKind compactDate(Cells cells, int i, StampScan stamps) {
    Stamp stamp = stamps.scan(cells.buffer(), cells.start(i), cells.end(i));
    return stamp.kind() == Stamp.Kind.NONE ? ColumnKind.NUMBER : stampKind(stamp);
  }

  private static ColumnKind stampKind(Stamp stamp) {
    return switch (stamp.kind()) {
      case DATE -> ColumnKind.DATE;
      case TIME -> ColumnKind.TIME;
      case DATE_TIME -> ColumnKind.DATE_TIME;
      case NONE -> ColumnKind.TEXT;
    };
  }

  /** What most cells hold that hold anything; header lines count too, so text must clearly win. */
  private static ColumnKind elected(int[] votes, int seen) {
    ColumnKind best = ColumnKind.EMPTY;
    int bestVotes = 0;
    for (ColumnKind kind : ColumnKind.values()) {
      int count = votes[position(kind)];
      boolean headerOnly = kind == ColumnKind.TEXT && count <= MOST_HEADER_LINES && count < seen;
      int weighed = headerOnly && bestVotes > 0 ? 0 : count;
      if (kind != ColumnKind.EMPTY && weighed > bestVotes) {
        best = kind;
        bestVotes = weighed;
      }
    }
    return best;
  }

  private static boolean isBody(
      SampleLine line, Cells cells, List<ColumnKind> kinds, CellSorter sorter) {
    line.splitWith(cells);
    if (line.isBlank() || cells.count() < kinds.size()) {
      return false;
    }
    int measured = 0;
    int against = 0;
    for (int i = 0; i < kinds.size(); i++) {
      CellKind kind = sorter.kindOf(cells, i, line.charset());
      boolean expected = kinds.get(i) == ColumnKind.NUMBER || kinds.get(i).isStamp();
      if (expected && kind.isMeasured()) {
        measured++;
      } else if (expected && kind == CellKind.TEXT) {
        against++;
      }
    }
    return measured > 0 && measured >= AGREEING_SHARE * (measured + against);
  }

  private boolean isHeader(SampleLine line, Cells cells, int usual, CellSorter sorter) {
    if (line.isBlank() || isRemark(line) || isAnnouncement(line)) {
      return false;
    }
    line.splitWith(cells);
    if (cells.count() < usual - 1 || cells.count() > usual + 2) {
      return false;
    }
    int texts = 0;
    int measured = 0;
    for (int i = 0; i < cells.count(); i++) {
      CellKind kind = sorter.kindOf(cells, i, line.charset());
      if (kind == CellKind.TEXT || kind == CellKind.WORD) {
        texts++;
      } else if (kind.isMeasured()) {
        measured++;
      }
    }
    boolean keyAndValue =
        usual > 3 && !cells.isEmpty(0) && !cells.isEmpty(1) && texts <= 2 && texts + measured == 2;
    boolean colonKey = cells.text(0, line.charset()).endsWith(":");
    return texts > 0 && texts >= 3 * measured && !keyAndValue && !colonKey;
  }

  private boolean isUnitLine(SampleLine line, Cells cells) {
    line.splitWith(cells);
    int named = 0;
    int unit = 0;
    for (int i = 0; i < cells.count(); i++) {
      if (!cells.isEmpty(i)) {
        named++;
        if (units.find(cells.text(i, line.charset())).isPresent()) {
          unit++;
        }
      }
    }
    return named > 0 && unit >= 0.5 * named;
  }
}
