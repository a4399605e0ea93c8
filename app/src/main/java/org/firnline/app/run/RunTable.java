package org.firnline.app.run;

import java.util.ArrayList;
import java.util.List;
import org.firnline.app.run.RunView.Table;
import org.firnline.app.run.RunView.TableRow;
import org.firnline.app.words.LogClock;
import org.firnline.logs.Log;

/** The picture of a run in figures: every drawn channel at a few evenly spaced times. */
final class RunTable {
  private static final int TIMES = 25;
  private static final String NOTHING = "–";

  private RunTable() {}

  static Table of(Log log, LogClock clock) {
    List<DrawnChannel> drawn = DrawnChannel.of(log);
    List<TableRow> rows = new ArrayList<>();
    int last = log.time().size() - 1;
    int times = Math.min(TIMES, last + 1);
    for (int i = 0; i < times; i++) {
      int row = times == 1 ? 0 : (int) Math.round((double) last * i / (times - 1));
      rows.add(
          new TableRow(
              clock.moment(log.time().instant(row)),
              drawn.stream().map(channel -> figure(channel, row)).toList()));
    }
    return new Table(
        drawn.stream().map(channel -> channel.channel().name()).toList(), List.copyOf(rows));
  }

  private static String figure(DrawnChannel channel, int row) {
    double value = channel.channel().series().value(row);
    return Double.isNaN(value) ? NOTHING : channel.pane().words(value);
  }
}
