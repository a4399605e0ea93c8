package org.firnline.review.simulated;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.cycle.CycleLog;
import org.firnline.drying.cycle.CycleSchedule;
import org.firnline.drying.cycle.LoggedChannel;
import org.firnline.logs.Log;
import org.firnline.logs.TimeBasis;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.TimeAxis;

/** A simulated log as the log reader would hand it over. */
final class LogOf {
  private LogOf() {}

  static Log simulated(CycleLog cycle, Logged logged, CycleSchedule schedule) {
    long start = SimulatedRun.START.toEpochMilli();
    long[] times = cycle.times().stream().mapToLong(t -> start + Math.round(1_000 * t)).toArray();
    List<Channel> channels = new ArrayList<>();
    for (LoggedChannel channel : cycle.channels()) {
      if (logged.kinds().contains(channel.kind())) {
        channels.add(channel(channel));
      }
    }
    if (logged == Logged.EVERYTHING) {
      double[] asked = cycle.times().stream().mapToDouble(t -> schedule.pressure().at(t)).toArray();
      channels.add(channel("pressure set point", Role.PRESSURE_SET_POINT, asked));
    }
    return new Log(
        "simulated",
        TimeAxis.of(times),
        new TimeBasis(ZoneId.of("UTC"), "simulated", true),
        channels,
        List.of(),
        List.of());
  }

  private static Channel channel(LoggedChannel logged) {
    Role role = role(logged.kind());
    String name =
        logged.kind() == LoggedChannel.Kind.PRODUCT
            ? "product " + (logged.number() + 1)
            : role.label();
    return channel(name, role, logged.values().stream().mapToDouble(v -> v).toArray());
  }

  private static Channel channel(String name, Role role, double[] values) {
    return new Channel(
        name,
        role,
        Confidence.HIGH,
        role.dimension().siUnit(),
        Confidence.HIGH,
        Series.of(values),
        List.of());
  }

  private static Role role(LoggedChannel.Kind kind) {
    return switch (kind) {
      case SHELF_SET_POINT -> Role.SHELF_SET_POINT;
      case SHELF -> Role.SHELF;
      case CAPACITANCE_GAUGE -> Role.PRESSURE_CAPACITANCE;
      case THERMAL_GAUGE -> Role.PRESSURE_THERMAL;
      case PRODUCT -> Role.PRODUCT;
      case COLLECTOR -> Role.COLLECTOR;
      case VAPOR_RATE -> Role.VAPOR_RATE;
    };
  }
}
