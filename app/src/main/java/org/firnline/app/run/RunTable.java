package org.firnline.app.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.firnline.app.run.RunView.Table;
import org.firnline.app.run.RunView.TableRow;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.Quantities;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Dimension;
import org.firnline.logs.channel.Role;
import org.firnline.units.QuantityKind;

/** The picture of a run in figures: every drawn channel at a few evenly spaced times. */
final class RunTable {
  private static final int TIMES = 25;
  private static final String NOTHING = "–";

  private RunTable() {}

  static Table of(Log log, LogClock clock) {
    List<Channel> drawn = drawn(log);
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
    return new Table(drawn.stream().map(Channel::name).toList(), List.copyOf(rows));
  }

  private static List<Channel> drawn(Log log) {
    Map<Role, Integer> seen = new EnumMap<>(Role.class);
    return log.channels().stream()
        .filter(
            channel ->
                PictureRole.of(channel.role(), seen.merge(channel.role(), 1, Integer::sum) - 1)
                    .isPresent())
        .toList();
  }

  private static String figure(Channel channel, int row) {
    double value = channel.series().value(row);
    if (Double.isNaN(value)) {
      return NOTHING;
    }
    boolean temperature = channel.role().dimension() == Dimension.TEMPERATURE;
    return Quantities.words(value, temperature ? QuantityKind.TEMPERATURE : QuantityKind.PRESSURE);
  }
}
