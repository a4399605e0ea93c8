package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/** A log prepared for review: every channel that matters on one even time grid. */
final class Run {
  private final Log log;
  private final Grid grid;
  private final List<Trace> traces;

  private Run(Log log, Grid grid, List<Trace> traces) {
    this.log = log;
    this.grid = grid;
    this.traces = traces;
  }

  static Run of(Log log) {
    Grid grid = Grid.over(log.time());
    List<Trace> traces = new ArrayList<>();
    for (Channel channel : log.channels()) {
      boolean matters =
          channel.role() != Role.IGNORED
              && channel.role() != Role.UNKNOWN
              && channel.labels().isEmpty();
      if (matters && channel.series().goodCount() > 0) {
        traces.add(new Trace(channel, grid.sample(channel.series())));
      }
    }
    return new Run(log, grid, traces);
  }

  /** The same run without the samples of failed sensors. */
  Run without(List<SensorFault> faults) {
    List<Trace> kept = new ArrayList<>();
    for (Trace trace : traces) {
      Signal signal = trace.signal();
      for (SensorFault fault : faults) {
        if (fault.trace().name().equals(trace.name())) {
          signal = signal.without(fault.stretch().start(), fault.stretch().end() + 1);
        }
      }
      if (signal.goodIn(0, signal.size()) > 0) {
        kept.add(new Trace(trace.channel(), signal));
      }
    }
    return new Run(log, grid, kept);
  }

  Log log() {
    return log;
  }

  Grid grid() {
    return grid;
  }

  int size() {
    return grid.size();
  }

  List<Trace> all() {
    return traces;
  }

  List<Trace> all(Role role) {
    return traces.stream().filter(trace -> trace.channel().role() == role).toList();
  }

  Optional<Trace> first(Role role) {
    return traces.stream().filter(trace -> trace.channel().role() == role).findFirst();
  }

  /** Thermometers that belong to one vessel each. */
  List<Trace> vesselThermometers() {
    return traces.stream().filter(t -> t.channel().role().isVesselThermometer()).toList();
  }

  /** The gauge to trust for the chamber: the one that reads true pressure if there is one. */
  Optional<Trace> truestGauge() {
    return first(Role.PRESSURE_CAPACITANCE)
        .or(() -> first(Role.PRESSURE))
        .or(() -> first(Role.PRESSURE_THERMAL));
  }

  /** The gauge that follows the pump-down from the atmosphere: the one with the widest range. */
  Optional<Trace> widestGauge() {
    Optional<Trace> widest = Optional.empty();
    double most = 0;
    for (Trace trace : traces) {
      if (trace.channel().role().isChamberPressure()) {
        Signal signal = trace.signal();
        double low = Math.max(1e-3, signal.quantileIn(0, size(), 0.02));
        double range = signal.quantileIn(0, size(), 1) / low;
        if (range > most) {
          most = range;
          widest = Optional.of(trace);
        }
      }
    }
    return widest;
  }

  /** What a vessel's thermometer approaches when its ice is gone: the shelf, or the room. */
  Optional<Trace> surroundings() {
    return first(Role.SHELF).or(() -> first(Role.SHELF_SET_POINT)).or(() -> first(Role.ROOM));
  }

  boolean hasShelf() {
    return first(Role.SHELF).isPresent() || first(Role.SHELF_SET_POINT).isPresent();
  }
}
