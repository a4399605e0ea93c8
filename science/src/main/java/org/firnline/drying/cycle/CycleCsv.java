package org.firnline.drying.cycle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.firnline.units.Figures;
import org.firnline.units.Unit;

/**
 * Writes a simulated log as comma-separated lines: UTC, °C and Pa; an open sensor leaves a blank.
 */
public final class CycleCsv {

  private static final Unit CELSIUS = Unit.parse("°C");

  private CycleCsv() {}

  /**
   * The lines of {@code log}, the heading first. The vapor rate, which few dryers know, is left
   * out.
   *
   * @param start when the first row was written
   */
  public static List<String> lines(CycleLog log, Instant start) {
    List<LoggedChannel> channels =
        log.channels().stream()
            .filter(channel -> channel.kind() != LoggedChannel.Kind.VAPOR_RATE)
            .toList();
    List<String> lines = new ArrayList<>();
    lines.add("time," + String.join(",", channels.stream().map(CycleCsv::heading).toList()));
    for (int row = 0; row < log.times().size(); row++) {
      StringBuilder line = new StringBuilder(at(start, log.times().get(row)).toString());
      for (LoggedChannel channel : channels) {
        line.append(',').append(cell(channel, row));
      }
      lines.add(line.toString());
    }
    return lines;
  }

  private static Instant at(Instant start, double seconds) {
    return start.plusMillis(Math.round(1_000 * seconds));
  }

  private static String heading(LoggedChannel channel) {
    return switch (channel.kind()) {
      case SHELF_SET_POINT -> "shelf set (degC)";
      case SHELF -> "shelf (degC)";
      case CAPACITANCE_GAUGE -> "chamber capacitance (Pa)";
      case THERMAL_GAUGE -> "chamber thermal (Pa)";
      case PRODUCT -> "product " + (channel.number() + 1) + " (degC)";
      case COLLECTOR -> "collector (degC)";
      case VAPOR_RATE -> "vapor rate (kg/s)";
    };
  }

  private static String cell(LoggedChannel channel, int row) {
    double value = channel.values().get(row);
    if (Double.isNaN(value)) {
      return "";
    }
    boolean pressure =
        channel.kind() == LoggedChannel.Kind.CAPACITANCE_GAUGE
            || channel.kind() == LoggedChannel.Kind.THERMAL_GAUGE;
    String text =
        pressure ? Figures.decimals(value, 3) : Figures.decimals(CELSIUS.fromSi(value), 2);
    return text.replace('−', '-');
  }
}
