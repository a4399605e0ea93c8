package org.firnline.app.run;

import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.units.Unit;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The channels of a log as lines of a picture, no denser than it has pixels. */
final class PictureLines {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Unit CELSIUS = Unit.parse("°C");

  private PictureLines() {}

  /**
   * Lines over a stretch of the log.
   *
   * @param from_s first second since the log's first row
   * @param to_s last second
   * @param pixels columns of the picture
   */
  static ArrayNode of(Log log, double from_s, double to_s, int pixels) {
    Reduction reduction = new Reduction(log.time());
    int from = rowAt(log, from_s);
    int to = Math.min(log.time().size(), rowAt(log, to_s) + 1);
    ArrayNode lines = JSON.arrayNode();
    Map<Role, Integer> seen = new EnumMap<>(Role.class);
    for (int i = 0; i < log.channels().size(); i++) {
      Channel channel = log.channels().get(i);
      int nth = seen.merge(channel.role(), 1, Integer::sum) - 1;
      Optional<PictureRole> look = PictureRole.of(channel.role(), nth);
      if (look.isPresent()) {
        PictureRole drawn = look.get();
        ObjectNode line = lines.addObject();
        describe(line, "c" + i, channel, drawn);
        reduction.reduce(channel.series(), from, to, pixels, points(line, drawn));
      }
    }
    return lines;
  }

  private static int rowAt(Log log, double second) {
    long start = log.time().size() == 0 ? 0 : log.time().epochMillis(0);
    return log.time().indexAtOrAfter(Instant.ofEpochMilli(start + Math.round(second * 1_000)));
  }

  private static void describe(ObjectNode line, String key, Channel channel, PictureRole look) {
    line.put("key", key);
    line.put("name", channel.name());
    line.put("role", look.color());
    line.put("pane", look.pane());
    line.put("style", look.style());
  }

  private static Reduction.Line points(ObjectNode line, PictureRole look) {
    boolean temperature = look.pane().equals(PictureRole.TEMPERATURE);
    ArrayNode t = line.putArray("t");
    ArrayNode lo = line.putArray("lo");
    ArrayNode hi = line.putArray("hi");
    return (t_s, low, high) -> {
      t.add(Math.rint(t_s * 10) / 10);
      add(lo, low, temperature);
      add(hi, high, temperature);
    };
  }

  private static void add(ArrayNode array, double si, boolean temperature) {
    if (Double.isNaN(si)) {
      array.addNull();
    } else if (temperature) {
      array.add(Math.rint(CELSIUS.fromSi(si) * 100) / 100);
    } else {
      array.add(fourDigits(si));
    }
  }

  private static double fourDigits(double value) {
    if (value == 0) {
      return 0;
    }
    double scale = Math.pow(10, 3 - Math.floor(Math.log10(Math.abs(value))));
    return Math.rint(value * scale) / scale;
  }
}
