package org.firnline.app.run;

import java.time.Instant;
import java.util.List;
import org.firnline.logs.Log;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * The channels of a log as lines of a picture, no denser than it has pixels. The JSON is written by
 * hand: it is asked for with every turn of a wheel and may hold a hundred thousand numbers.
 */
final class PictureLines {
  private static final int LENGTH_OF_A_NUMBER = 8;

  private PictureLines() {}

  /**
   * Lines over a stretch of the log, as JSON: the times once, then each line's lowest and highest
   * values.
   *
   * @param from_s first second since the log's first row
   * @param to_s last second
   * @param pixels columns of the picture
   */
  static String json(Log log, double from_s, double to_s, int pixels) {
    int from = Math.max(0, rowAt(log, from_s) - 1);
    int to = Math.min(log.time().size(), rowAt(log, to_s) + 1);
    Columns columns = Columns.of(log.time(), from, to, pixels);
    List<DrawnChannel> drawn = DrawnChannel.of(log);
    StringBuilder json =
        new StringBuilder(LENGTH_OF_A_NUMBER * pixels * (2 * drawn.size() + 1) + 1_000);
    json.append("{\"t\":[");
    columns.times(t_s -> number(json, Math.rint(t_s * 10) / 10));
    close(json).append(",\"lines\":[");
    for (DrawnChannel channel : drawn) {
      line(json, channel, columns);
    }
    return close(json).append('}').toString();
  }

  private static void line(StringBuilder json, DrawnChannel channel, Columns columns) {
    json.append("{\"key\":\"").append(channel.key()).append("\",\"name\":");
    json.append(JsonNodeFactory.instance.stringNode(channel.channel().name()));
    json.append(",\"role\":\"").append(channel.look().color());
    json.append("\",\"pane\":\"").append(channel.pane().key());
    json.append("\",\"style\":\"").append(channel.look().style()).append("\",\"lo\":[");
    StringBuilder high = new StringBuilder(json.capacity() / 8);
    PicturePane pane = channel.pane();
    columns.reduce(
        channel.channel().series(),
        (lowest, highest) -> {
          number(json, pane.rounded(lowest));
          number(high, pane.rounded(highest));
        });
    close(json).append(",\"hi\":[").append(high);
    close(json).append("},");
  }

  private static void number(StringBuilder json, double value) {
    if (Double.isNaN(value)) {
      json.append("null,");
    } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      json.append((long) value).append(',');
    } else {
      json.append(value).append(',');
    }
  }

  /** Ends a list, without the comma after its last entry. */
  private static StringBuilder close(StringBuilder json) {
    int last = json.length() - 1;
    if (json.charAt(last) == ',') {
      json.setLength(last);
    }
    return json.append(']');
  }

  private static int rowAt(Log log, double second) {
    long start = log.time().size() == 0 ? 0 : log.time().epochMillis(0);
    return log.time().indexAtOrAfter(Instant.ofEpochMilli(start + Math.round(second * 1_000)));
  }
}
