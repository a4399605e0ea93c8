package org.firnline.logs;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firnline.logs.form.FixedWidth;
import org.firnline.logs.form.LongTable;
import org.firnline.logs.layout.LongShape;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.TableFinder;
import org.firnline.logs.layout.TableShape;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.text.EncodingVerdict;
import org.firnline.logs.text.Lines;
import org.firnline.logs.text.RowStream;

/**
 * Turns a text that is no delimited wide table into one, a row at a time; line numbers stay those
 * of the file.
 */
final class Rewriting {
  private static final int MOST_HEADINGS = 4;

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
    return FixedWidth.of(body);
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
  private static Set<Long> headings(
      FixedWidth columns, List<SampleLine> lines, TableShape shape) {
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
  TextSource longTable(TableShape shape, LongShape parts, TimePlan plan, List<SampleLine> before)
      throws IOException {
    LongTable table = new LongTable();
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
