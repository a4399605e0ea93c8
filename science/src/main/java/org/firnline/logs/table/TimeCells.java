package org.firnline.logs.table;

import java.nio.charset.Charset;
import java.util.List;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.SeriesBuilder;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.stamp.DateFields;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampColumn;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.LooseCell;
import org.firnline.logs.text.LooseCellReader;
import org.firnline.logs.text.NumberScan;

/** The time cells of a table while it is read. A row is first understood, then kept or not. */
public final class TimeCells {
  private final TimePlan plan;
  private final StampScan dateScan;
  private final StampScan clockScan;
  private final NumberScan numbers;
  private final LooseCellReader loose;
  private final Charset charset;
  private final StampColumn stamps = new StampColumn();
  private final SeriesBuilder figures = new SeriesBuilder();

  private Stamp stamp = new Stamp();
  private DateFields date = new DateFields(-1, -1, -1, 0, 0, 0, ' ');
  private double figure;
  private boolean plainFigure;

  TimeCells(TimePlan plan, Charset charset, NumberScan numbers, LooseCellReader loose) {
    this.plan = plan;
    this.charset = charset;
    this.dateScan = new StampScan(charset);
    this.clockScan = new StampScan(charset);
    this.numbers = numbers;
    this.loose = loose;
  }

  /** Understands the time cells of a line; false if they hold no time. */
  boolean take(Cells cells) {
    List<Integer> columns = plan.columns();
    return switch (plan.form()) {
      case NONE -> true;
      case STAMP, CLOCK -> takeStamp(cells, columns.get(0));
      case DATE_AND_CLOCK -> takeDateAndClock(cells, columns.get(0), columns.get(1));
      case FIGURES -> takeFigure(cells, columns.get(0));
    };
  }

  private boolean takeStamp(Cells cells, int cell) {
    if (cells.isEmpty(cell)) {
      return false;
    }
    stamp = clockScan.scan(cells.buffer(), cells.start(cell), cells.end(cell));
    boolean needsDate = plan.form() == TimePlan.Form.STAMP;
    return stamp.kind() != Stamp.Kind.NONE
        && (stamp.kind() != Stamp.Kind.TIME || !needsDate)
        && (needsDate || stamp.kind() == Stamp.Kind.TIME);
  }

  private boolean takeDateAndClock(Cells cells, int dateCell, int clockCell) {
    if (cells.isEmpty(dateCell) || cells.isEmpty(clockCell)) {
      return false;
    }
    Stamp day = dateScan.scan(cells.buffer(), cells.start(dateCell), cells.end(dateCell));
    stamp = clockScan.scan(cells.buffer(), cells.start(clockCell), cells.end(clockCell));
    boolean sound = day.kind() == Stamp.Kind.DATE && stamp.kind() == Stamp.Kind.TIME;
    if (sound && !day.sameDateAs(date)) {
      date = day.dateFields();
    }
    return sound;
  }

  private boolean takeFigure(Cells cells, int cell) {
    if (cells.isEmpty(cell)) {
      return false;
    }
    plainFigure = numbers.scan(cells.buffer(), cells.start(cell), cells.end(cell));
    if (plainFigure) {
      return true;
    }
    LooseCell found = loose.read(cells.text(cell, charset));
    figure = found.number();
    return found.kind() == LooseCell.Kind.NUMBER;
  }

  /** Keeps the time of the row just understood. */
  void keep() {
    switch (plan.form()) {
      case NONE -> {
        // the order of the rows is all there is
      }
      case STAMP, CLOCK -> stamps.add(stamp);
      case DATE_AND_CLOCK -> stamps.add(date, stamp);
      case FIGURES -> {
        if (plainFigure) {
          figures.append(numbers.mantissa(), numbers.decimals(), Quality.GOOD);
        } else {
          figures.append(figure, Quality.GOOD);
        }
      }
    }
  }

  /** The plan these cells were read by. */
  public TimePlan plan() {
    return plan;
  }

  /** The stamps of all kept rows; empty for times in figures. */
  public StampColumn stamps() {
    return stamps;
  }

  /** The times in figures of all kept rows, as written. */
  public double[] figures() {
    return figures.build(1, 0).toArray();
  }
}
