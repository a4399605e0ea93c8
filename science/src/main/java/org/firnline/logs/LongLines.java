package org.firnline.logs;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.form.LongTable;
import org.firnline.logs.layout.LongShape;
import org.firnline.logs.layout.TableShape;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.Lines;
import org.firnline.logs.text.NumberScan;

/** The lines of a long table, taken apart. */
final class LongLines implements LongTable.Source {
  private final Lines lines;
  private final TableShape shape;
  private final LongShape parts;
  private final List<Integer> time;
  private final Cells cells;
  private final StampScan stamps;
  private final NumberScan numbers;

  LongLines(Lines lines, TableShape shape, LongShape parts, List<Integer> time) {
    this.lines = lines;
    this.shape = shape;
    this.parts = parts;
    this.time = time;
    this.cells = new Cells(shape.dialect().delimiter());
    this.stamps = new StampScan(lines.charset());
    this.numbers = new NumberScan(shape.dialect().decimalMark());
  }

  @Override
  public Optional<LongTable.Line> next() throws IOException {
    while (lines.advance()) {
      if (lines.number() >= shape.bodyStart()) {
        cells.split(lines.buffer(), lines.from(), lines.to());
        if (!cells.isEmpty(parts.tag()) && !isUnfinished()) {
          return Optional.of(line());
        }
      }
    }
    return Optional.empty();
  }

  private boolean isUnfinished() {
    return !lines.terminated() && cells.count() < shape.usualCells();
  }

  private LongTable.Line line() {
    StringBuilder stamp = new StringBuilder();
    double moment = Double.NaN;
    for (int column : time) {
      stamp.append(stamp.isEmpty() ? "" : " ").append(text(column));
      double found = moment(column);
      moment = Double.isNaN(found) ? moment : found;
    }
    return new LongTable.Line(
        lines.number(),
        stamp.toString(),
        moment,
        text(parts.tag()),
        text(parts.value()),
        text(parts.unit()),
        text(parts.quality()));
  }

  private double moment(int column) {
    if (cells.isEmpty(column)) {
      return Double.NaN;
    }
    int from = cells.start(column);
    int to = cells.end(column);
    if (numbers.scan(cells.buffer(), from, to)) {
      return numbers.value();
    }
    Stamp stamp = stamps.scan(cells.buffer(), from, to);
    boolean clock = stamp.kind() == Stamp.Kind.TIME || stamp.kind() == Stamp.Kind.DATE_TIME;
    return clock ? stamp.millis() : Double.NaN;
  }

  private String text(int column) {
    return column < 0 ? "" : cells.text(column, lines.charset());
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
