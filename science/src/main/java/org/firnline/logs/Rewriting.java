package org.firnline.logs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firnline.logs.form.FixedWidth;
import org.firnline.logs.form.LongTable;
import org.firnline.logs.layout.ColumnHeading;
import org.firnline.logs.layout.LongShape;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.TableFinder;
import org.firnline.logs.layout.TableShape;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.text.EncodingVerdict;
import org.firnline.logs.text.Lines;
import org.firnline.logs.text.RowStream;

/**
 * Turns a text that is no delimited wide table into one, a row at a time; line numbers stay those
 * of the file.
 */
final class Rewriting {
  private static final int MOST_HEADINGS = 4;
  private static final int ENOUGH_ROWS = 40;

  /** Day, month, year, clock time, half of the day. */
  private static final int MOST_PIECES = 5;

  private final TextSource text;
  private final EncodingVerdict encoding;

  Rewriting(TextSource text, EncodingVerdict encoding) {
    this.text = text;
    this.encoding = encoding;
  }

  private Lines open() throws IOException {
    return Lines.open(text.bytes(), encoding, text.firstNumber());
  }

  /** The fixed places of a table's columns; empty if it has none. */
  Optional<FixedWidth> columns(List<SampleLine> lines, TableShape shape) {
    List<String> body =
        lines.stream()
            .filter(line -> line.number() >= shape.bodyStart())
            .filter(line -> !line.isBlank() && !TableFinder.isRemark(line))
            .map(line -> line.text().stripTrailing())
            .filter(line -> line.chars().anyMatch(Character::isDigit))
            .toList();
    return FixedWidth.of(body).map(columns -> withWholeStamps(columns, body));
  }

  /** Stamps that blanks cut into pieces are put together: "14 Oct 2026 06:40:00". */
  private FixedWidth withWholeStamps(FixedWidth columns, List<String> body) {
    StampScan stamps = new StampScan(StandardCharsets.UTF_8);
    List<List<String>> rows =
        body.stream().filter(columns::fits).limit(ENOUGH_ROWS).map(columns::cut).toList();
    for (int count = 1; count <= Math.min(MOST_PIECES, columns.columns() - 1); count++) {
      for (int first = 0; first + count < columns.columns(); first++) {
        if (!rows.isEmpty() && areWhole(rows, first, first + count, stamps)) {
          int next = first + count;
          boolean half =
              rows.stream().allMatch(cells -> cells.get(next).matches("(?i)[ap]\\.?m\\.?"));
          int pieces = half ? count + 1 : count;
          return pieces == 1 ? columns : columns.merged(first, pieces);
        }
      }
    }
    return columns;
  }

  private static boolean areWhole(List<List<String>> rows, int from, int to, StampScan stamps) {
    return rows.stream()
        .map(cells -> String.join(" ", cells.subList(from, to)))
        .allMatch(cell -> stamps.scan(cell).kind() == Stamp.Kind.DATE_TIME);
  }

  /** A table of fixed places as a delimited one. */
  TextSource fixedWidth(FixedWidth columns, List<SampleLine> lines, TableShape shape) {
    Set<Long> headings = headings(columns, lines, shape);
    return TextSource.rewritten(
        text.fileName(),
        "fixed width",
        () -> new RowStream(new FixedRows(open(), columns, headings, shape.bodyStart())),
        List.of(),
        text.firstNumber());
  }

  /** The lines right above the body that stand over its columns. */
  private static Set<Long> headings(FixedWidth columns, List<SampleLine> lines, TableShape shape) {
    List<SampleLine> above =
        lines.stream().filter(line -> line.number() < shape.bodyStart()).toList();
    Set<Long> headings = new HashSet<>();
    for (int i = above.size() - 1; i >= 0 && headings.size() < MOST_HEADINGS; i--) {
      SampleLine line = above.get(i);
      List<String> cells = columns.cutHeading(line.text().replace("\uFEFF", ""));
      long named = cells.stream().filter(cell -> !cell.isEmpty()).count();
      long figures = cells.stream().filter(cell -> cell.matches("[-+.,\\d]+")).count();
      boolean heads = named * 2 >= cells.size() && named > 1 && figures * 3 <= named;
      if (line.isBlank() || TableFinder.isRemark(line) || !heads) {
        break;
      }
      headings.add(line.number());
    }
    return headings;
  }

  /** A long table as a wide one. */
  TextSource longTable(
      TableShape shape,
      LongShape parts,
      TimePlan plan,
      List<SampleLine> before,
      List<ColumnHeading> headings)
      throws IOException {
    String time =
        plan.columns().size() == 1 ? headings.get(plan.columns().get(0)).header() : "time";
    LongTable table = new LongTable(time.isEmpty() ? "time" : time);
    try (LongLines lines = new LongLines(open(), shape, parts, plan.columns())) {
      table.survey(lines);
    }
    return TextSource.rewritten(
        text.fileName(),
        TextSource.LONG,
        () -> new RowStream(table.rows(new LongLines(open(), shape, parts, plan.columns()))),
        before,
        1);
  }
}
