package org.firnline.app.run;

import java.io.IOException;
import java.io.Writer;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Dimension;
import org.firnline.logs.channel.Role;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Channels of a log as a file for other programs: every row, UTC, decimal points, units in the
 * heading. Missing samples stay empty.
 */
final class ChannelFile {
  /** A spreadsheet takes text that begins with one of these for a formula. */
  private static final Set<Character> FORMULA_STARTS = Set.of('=', '+', '-', '@', '\t', '\r');

  private static final int FINE_DIGITS = 9;

  private final Log log;
  private final List<Column> columns;
  private final int from;
  private final int to;

  /**
   * A file of some channels.
   *
   * @param keys which channels, by the names the picture gives them; empty for all that are drawn
   * @param si whether quantities are written in SI units, else in those of the picture
   * @param from first row
   * @param to row after the last
   */
  ChannelFile(Log log, Set<String> keys, boolean si, int from, int to) {
    this.log = log;
    this.columns = columns(log, keys, si);
    this.from = from;
    this.to = to;
  }

  /** A column: its heading and how its samples are written. */
  private record Column(Channel channel, String unit, Samples samples) {}

  private interface Samples {
    /** A good sample as text that is both CSV and JSON. */
    String text(double si);
  }

  private static List<Column> columns(Log log, Set<String> keys, boolean si) {
    if (keys.contains("all")) {
      return log.channels().stream().map(ChannelFile::asKept).toList();
    }
    return DrawnChannel.of(log).stream()
        .filter(drawn -> keys.isEmpty() || keys.contains(drawn.key()))
        .map(drawn -> si ? asKept(drawn.channel()) : asShown(drawn))
        .toList();
  }

  private static Column asKept(Channel channel) {
    Samples samples =
        channel.role().dimension() == Dimension.TEXT
            ? value -> channel.labels().get((int) value)
            : value -> plain(fine(value));
    return new Column(channel, channel.role().dimension().siUnit(), samples);
  }

  private static Column asShown(DrawnChannel drawn) {
    return new Column(
        drawn.channel(),
        drawn.pane().unit().replace("°C", "degC"),
        value -> plain(drawn.pane().rounded(value)));
  }

  /** Nine significant digits: what conversion adds behind them is noise. */
  private static double fine(double value) {
    if (value == 0) {
      return 0;
    }
    double scale = Math.pow(10, FINE_DIGITS - 1 - Math.floor(Math.log10(Math.abs(value))));
    return Math.rint(value * scale) / scale;
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }

  /** Writes comma-separated text (RFC 4180). */
  void csv(Writer out) throws IOException {
    boolean known = log.basis().startKnown();
    out.write(known ? "time_utc,elapsed_s" : "elapsed_s");
    for (Column column : columns) {
      String unit = column.unit().isEmpty() ? "" : " [" + column.unit() + "]";
      out.write("," + cell(column.channel().name() + unit));
    }
    out.write("\r\n");
    for (int row = from; row < to; row++) {
      if (known) {
        out.write(log.time().instant(row).toString() + ",");
      }
      out.write(plain(log.time().elapsed_s(row)));
      for (Column column : columns) {
        out.write(',');
        out.write(csvSample(column, row));
      }
      out.write("\r\n");
    }
  }

  private static String csvSample(Column column, int row) {
    double value = column.channel().series().value(row);
    if (Double.isNaN(value)) {
      return "";
    }
    String text = column.samples().text(value);
    return column.channel().role().dimension() == Dimension.TEXT ? cell(text) : text;
  }

  /** Text as a cell: no formula, and quoted where it has to be. */
  static String cell(String text) {
    boolean formula = !text.isEmpty() && FORMULA_STARTS.contains(text.charAt(0));
    String plain = formula ? "'" + text : text;
    return plain.matches("[^,\"\\r\\n]*") ? plain : '"' + plain.replace("\"", "\"\"") + '"';
  }

  /** Writes a JSON object: times once, then each channel's name, role, unit and values. */
  void json(Writer out, String title) throws IOException {
    ObjectNode head = JsonNodeFactory.instance.objectNode();
    head.put("run", title);
    head.put("startKnown", log.basis().startKnown());
    head.put("start_utc", log.start().orElse(Instant.EPOCH).toString());
    String opened = head.toString();
    out.write(opened.substring(0, opened.length() - 1));
    out.write(",\"elapsed_s\":[");
    writeAll(out, row -> plain(log.time().elapsed_s(row)));
    out.write("],\"channels\":[");
    String between = "";
    for (Column column : columns) {
      out.write(between);
      channel(out, column);
      between = ",";
    }
    out.write("]}");
  }

  private void channel(Writer out, Column column) throws IOException {
    ObjectNode about = JsonNodeFactory.instance.objectNode();
    Role role = column.channel().role();
    about.put("name", column.channel().name()).put("role", role.label());
    about.put("unit", column.unit());
    String opened = about.toString();
    out.write(opened.substring(0, opened.length() - 1));
    out.write(",\"values\":[");
    writeAll(
        out,
        row -> {
          double value = column.channel().series().value(row);
          if (Double.isNaN(value)) {
            return "null";
          }
          String text = column.samples().text(value);
          return role.dimension() == Dimension.TEXT
              ? JsonNodeFactory.instance.stringNode(text).toString()
              : text;
        });
    out.write("]}");
  }

  private interface Written {
    String of(int row);
  }

  private void writeAll(Writer out, Written written) throws IOException {
    for (int row = from; row < to; row++) {
      if (row > from) {
        out.write(',');
      }
      out.write(written.of(row));
    }
  }
}
