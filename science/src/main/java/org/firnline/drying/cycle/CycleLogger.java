package org.firnline.drying.cycle;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.firnline.numerics.SeededUniform;

/**
 * Reads a simulated cycle through sensors, at even times, as a dryer's own logger would.
 *
 * <p>Truth goes straight from step to step; a sensor follows it with its time constant, exactly for
 * straight lines, then adds bias and noise and rounds. A thermal gauge reads P (1 + g x_w) with x_w
 * the share of vapor in the chamber.
 *
 * @param interval between two rows, s; positive
 * @param sensors by kind of channel; kinds left out read the truth
 * @param failures of sensors; may be empty
 * @param seed of the noise: the same seed gives the same log
 */
public record CycleLogger(
    double interval,
    Map<LoggedChannel.Kind, Sensor> sensors,
    List<SensorFailure> failures,
    long seed) {

  public CycleLogger {
    if (!(interval > 0)) {
      throw new IllegalArgumentException("an interval of " + interval + " s is not positive");
    }
    sensors = Map.copyOf(sensors);
    failures = List.copyOf(failures);
  }

  /** A logger that tells the truth. */
  public static CycleLogger exact(double interval_s) {
    return new CycleLogger(interval_s, Map.of(), List.of(), 0);
  }

  /** Usual sensors for every channel, without bias. */
  public static CycleLogger usual(double interval_s, long seed) {
    Map<LoggedChannel.Kind, Sensor> sensors = new EnumMap<>(LoggedChannel.Kind.class);
    for (LoggedChannel.Kind kind :
        List.of(
            LoggedChannel.Kind.SHELF, LoggedChannel.Kind.PRODUCT, LoggedChannel.Kind.COLLECTOR)) {
      sensors.put(kind, Sensor.thermometer(0));
    }
    sensors.put(LoggedChannel.Kind.CAPACITANCE_GAUGE, Sensor.gauge());
    sensors.put(LoggedChannel.Kind.THERMAL_GAUGE, Sensor.gauge());
    return new CycleLogger(interval_s, sensors, List.of(), seed);
  }

  /** What {@code dryer} would have logged of {@code run}. */
  public CycleLog log(CycleRun run, CycleDryer dryer) {
    List<CycleMoment> moments = run.moments();
    double last = moments.get(moments.size() - 1).time();
    List<Double> times = new ArrayList<>();
    for (int row = 0; row * interval <= last; row++) {
      times.add(row * interval);
    }
    List<LoggedChannel> channels = new ArrayList<>();
    for (LoggedChannel.Kind kind : LoggedChannel.Kind.values()) {
      int count = kind == LoggedChannel.Kind.PRODUCT ? moments.get(0).products().size() : 1;
      for (int number = 0; number < count; number++) {
        List<Double> values =
            new ChannelReading(truth(kind, number, dryer), sensor(kind), noise(kind, number))
                .at(times, moments);
        channels.add(new LoggedChannel(kind, number, failed(kind, number, times, values)));
      }
    }
    return new CycleLog(times, channels);
  }

  private Sensor sensor(LoggedChannel.Kind kind) {
    return sensors.getOrDefault(kind, Sensor.TRUE);
  }

  private ChannelReading.Noise noise(LoggedChannel.Kind kind, int number) {
    var chance = new SeededUniform(seed);
    return row -> chance.normalAt(kind.name().hashCode(), number, row);
  }

  private static ToDoubleFunction<CycleMoment> truth(
      LoggedChannel.Kind kind, int number, CycleDryer dryer) {
    return switch (kind) {
      case SHELF_SET_POINT -> CycleMoment::shelfSetPoint;
      case SHELF -> CycleMoment::shelf;
      case CAPACITANCE_GAUGE -> moment -> Math.min(dryer.gaugeLimit(), moment.pressure());
      case THERMAL_GAUGE ->
          moment -> moment.pressure() * (1 + dryer.vaporExcess() * moment.vaporShare());
      case PRODUCT -> moment -> moment.products().get(number);
      case COLLECTOR -> CycleMoment::collector;
      case VAPOR_RATE -> CycleMoment::vaporRate;
    };
  }

  private List<Double> failed(
      LoggedChannel.Kind kind, int number, List<Double> times, List<Double> values) {
    List<Double> shown = new ArrayList<>(values);
    for (int row = 0; row < shown.size(); row++) {
      for (SensorFailure failure : failures) {
        if (failure.concerns(kind, number, times.get(row))) {
          boolean open = failure.way() == SensorFailure.Way.OPEN;
          shown.set(row, open ? Double.NaN : shown.get(Math.max(0, row - 1)));
        }
      }
    }
    return shown;
  }
}
