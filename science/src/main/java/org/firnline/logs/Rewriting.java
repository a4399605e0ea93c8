package org.firnline.logs;

import java.io.IOException;
import java.util.List;
import org.firnline.logs.form.JsonLines;
import org.firnline.logs.form.LongTable;
import org.firnline.logs.layout.LongShape;
import org.firnline.logs.layout.TableShape;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.text.ByteSource;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.EncodingVerdict;
import org.firnline.logs.text.Lines;

/** Turns a file that is no wide table into one. */
final class Rewriting {
  private final ByteSource source;
  private final EncodingVerdict encoding;

  Rewriting(ByteSource source, EncodingVerdict encoding) {
    this.source = source;
    this.encoding = encoding;
  }

  byte[] jsonLines() throws IOException {
    JsonLines json = new JsonLines();
    try (Lines lines = Lines.open(source, encoding)) {
      while (lines.advance()) {
        json.take(lines.text());
      }
    }
    return json.table();
  }

  byte[] longTable(TableShape shape, LongShape parts, TimePlan plan) throws IOException {
    LongTable table = new LongTable();
    Cells cells = new Cells(shape.dialect().delimiter());
    try (Lines lines = Lines.open(source, encoding)) {
      while (lines.advance()) {
        if (lines.number() < shape.bodyStart()) {
          continue;
        }
        cells.split(lines.buffer(), lines.from(), lines.to());
        if (!cells.isEmpty(parts.tag())) {
          table.take(line(cells, parts, plan.columns(), lines));
        }
      }
    }
    return table.table();
  }

  private static LongTable.Line line(
      Cells cells, LongShape parts, List<Integer> time, Lines lines) {
    StringBuilder stamp = new StringBuilder();
    for (int column : time) {
      stamp.append(stamp.isEmpty() ? "" : " ").append(cells.text(column, lines.charset()));
    }
    return new LongTable.Line(
        stamp.toString(),
        cells.text(parts.tag(), lines.charset()),
        cells.text(parts.value(), lines.charset()),
        parts.unit() < 0 ? "" : cells.text(parts.unit(), lines.charset()),
        parts.quality() < 0 ? "" : cells.text(parts.quality(), lines.charset()));
  }
}
