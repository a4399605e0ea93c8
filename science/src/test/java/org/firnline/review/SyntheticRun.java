package org.firnline.review;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import org.firnline.logs.Log;
import org.firnline.logs.Marker;
import org.firnline.logs.TimeBasis;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.TimeAxis;

/**
 * A run made up for tests: vials on a shelf dryer, one sample a minute. Freezing 4 h at -45 °C,
 * pump at 4 h, shelf to -20 °C from 4.5 h, two probed vials and a load that run out of ice at set
 * times, shelf to 25 °C from 30 h, air let in at 36 h, end at 36.3 h. Vials stand 12 K below the
 * shelf while they hold ice and follow it within minutes after; the heat-loss gauge reads 1.6 times
 * true pressure in vapor. Noise, offsets and incidents come on top; the random numbers have a fixed
 * seed.
 */
final class SyntheticRun {
  static final double PUMP_S = 4 * 3600.0;
  static final double PRIMARY_S = PUMP_S + 600;
  static final double HEAT_S = 30 * 3600.0;
  static final double VENT_S = 36 * 3600.0;
  static final double END_S = VENT_S + 1080;
  static final double PROBE_1_S = 18 * 3600.0;
  static final double PROBE_2_S = 20 * 3600.0;
  static final double LOAD_FROM_S = 17 * 3600.0;
  static final double LOAD_TO_S = 25 * 3600.0;

  private static final double ZERO_C = 273.15;

  final double step_s;
  final double[] second;
  final double[] shelfSet;
  final double[] shelf;
  final double[] truePressure;
  final double[] vaporShare;
  final double[] capacitance;
  final double[] thermal;
  final double[] collector;
  final double[] product1;
  final double[] product2;
  final List<Marker> markers = new ArrayList<>();
  private final List<int[]> cuts = new ArrayList<>();
  private final Random random = new Random(20261012);
  private boolean withSetPoint = true;

  SyntheticRun() {
    this(60);
  }

  SyntheticRun(double step_s) {
    this.step_s = step_s;
    int size = (int) (END_S / step_s) + 1;
    second = new double[size];
    shelfSet = new double[size];
    shelf = new double[size];
    truePressure = new double[size];
    vaporShare = new double[size];
    capacitance = new double[size];
    thermal = new double[size];
    collector = new double[size];
    product1 = new double[size];
    product2 = new double[size];
    for (int i = 0; i < size; i++) {
      double t = i * step_s;
      second[i] = t;
      shelfSet[i] = ZERO_C + setPoint(t);
      shelf[i] = shelfSet[i] + 0.1 * random.nextGaussian();
      truePressure[i] = pressure(t);
      vaporShare[i] = vaporShare(t);
      collector[i] = ZERO_C + (t > VENT_S ? -70 + (t - VENT_S) / 30 : -70) + 0.2 * noise();
      product1[i] = vial(t, shelfSet[i], PROBE_1_S, 12) + 0.1 * noise();
      product2[i] = vial(t, shelfSet[i], PROBE_2_S, 11) + 0.1 * noise();
    }
  }

  private double noise() {
    return random.nextGaussian();
  }

  private static double setPoint(double t) {
    if (t < PUMP_S + 1800) {
      return Math.max(-45, 20 - t / 60 * 0.5);
    }
    if (t < HEAT_S) {
      return Math.min(-20, -45 + (t - PUMP_S - 1800) / 60 * 0.5);
    }
    return Math.min(25, -20 + (t - HEAT_S) / 60 * 0.2);
  }

  private static double pressure(double t) {
    if (t < PUMP_S) {
      return 1e5;
    }
    return t < VENT_S ? Math.max(10, 1e5 * Math.exp(-(t - PUMP_S) / 60)) : 1e5;
  }

  private static double vaporShare(double t) {
    if (t < PUMP_S + 1800) {
      return 0;
    }
    double started = Math.min(1, (t - PUMP_S - 1800) / 2400);
    double left = 1 - (t - LOAD_FROM_S) / (LOAD_TO_S - LOAD_FROM_S);
    return started * Math.max(0, Math.min(1, left));
  }

  /** A vial: below the shelf by the gap while it holds ice, then toward it within ten minutes. */
  private static double vial(double t, double shelf, double end_s, double gap_K) {
    if (t < PUMP_S + 1800) {
      return shelf;
    }
    double started = Math.min(1, (t - PUMP_S - 1800) / 3000);
    double left = t < end_s ? 1 : Math.exp(-(t - end_s) / 600);
    return shelf - started * gap_K * left;
  }

  /** Changes a quantity from one time to another. */
  SyntheticRun between(double from_s, double to_s, BiConsumer<SyntheticRun, Integer> change) {
    for (int i = 0; i < second.length; i++) {
      if (second[i] >= from_s && second[i] < to_s) {
        change.accept(this, i);
      }
    }
    return this;
  }

  /** Leaves out all rows from one time to another. */
  SyntheticRun cut(double from_s, double to_s) {
    cuts.add(new int[] {(int) (from_s / step_s), (int) (to_s / step_s)});
    return this;
  }

  SyntheticRun withoutSetPoint() {
    withSetPoint = false;
    return this;
  }

  Log log() {
    return log(true);
  }

  /** The log of this run, with both gauges or only the heat-loss gauge. */
  Log log(boolean bothGauges) {
    for (int i = 0; i < second.length; i++) {
      double full = 1333;
      capacitance[i] += Math.min(full, truePressure[i] * (1 + 0.003 * noise()));
      thermal[i] += truePressure[i] * (1 + 0.6 * vaporShare[i]) * (1 + 0.01 * noise());
    }
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < second.length; i++) {
      int row = i;
      if (cuts.stream().noneMatch(cut -> row >= cut[0] && row < cut[1])) {
        kept.add(i);
      }
    }
    long start = Instant.parse("2026-10-12T06:00:00Z").toEpochMilli();
    long[] times = kept.stream().mapToLong(i -> start + Math.round(second[i] * 1000)).toArray();
    List<Channel> channels = new ArrayList<>();
    if (withSetPoint) {
      channels.add(channel("shelf set", Role.SHELF_SET_POINT, shelfSet, kept));
    }
    channels.add(channel("shelf", Role.SHELF, shelf, kept));
    if (bothGauges) {
      channels.add(channel("gauge 1", Role.PRESSURE_CAPACITANCE, capacitance, kept));
    }
    channels.add(channel("gauge 2", Role.PRESSURE_THERMAL, thermal, kept));
    channels.add(channel("collector", Role.COLLECTOR, collector, kept));
    channels.add(channel("product 1", Role.PRODUCT, product1, kept));
    channels.add(channel("product 2", Role.PRODUCT, product2, kept));
    return new Log(
        "synthetic",
        TimeAxis.of(times),
        new TimeBasis(ZoneId.of("UTC"), "synthetic", true),
        channels,
        markers,
        List.of());
  }

  private static Channel channel(String name, Role role, double[] values, List<Integer> kept) {
    double[] series = kept.stream().mapToDouble(i -> values[i]).toArray();
    return new Channel(
        name,
        role,
        Confidence.HIGH,
        role.dimension().siUnit(),
        Confidence.HIGH,
        Series.of(series),
        List.of());
  }
}
