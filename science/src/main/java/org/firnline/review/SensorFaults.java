package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.firnline.matter.Water;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * Finds thermometers that fail: silent for long, frozen at one value although they otherwise waver,
 * or jumping faster than anything with mass can warm. Their samples are then left out of every
 * other judgment.
 */
final class SensorFaults {
  private static final double SILENT_S = 1800;
  private static final double FROZEN_S = 900;
  private static final int FROZEN_POINTS = 12;

  /** A drifting value that is only rounded wavers by at most about half its last digit. */
  private static final double MORE_THAN_DIGITS = 1.5;

  private static final double MOVED_K = 5;

  /** No frozen vessel or shelf changes by this much from one sample to the next. */
  private static final double JUMP_K = 8;

  private static final double FASTEST_K_PER_S = 4.0 / 60;
  private static final double BACK_K = 4;
  private static final double SPIKE_S = 300;

  private static final double WATER_FREEZES_K = Water.TRIPLE_POINT_TEMPERATURE;

  /** Freezing points of solutions reach this far below that of water, K (assumed). */
  private static final double FREEZING_POINTS_K = 8;

  private SensorFaults() {}

  static List<SensorFault> find(Run run) {
    List<SensorFault> faults = new ArrayList<>();
    for (Trace trace : run.all()) {
      Role role = trace.channel().role();
      if (role.isVesselThermometer() || role == Role.SHELF || role == Role.COLLECTOR) {
        silent(run.grid(), trace).ifPresent(faults::add);
        if (role.isVesselThermometer()) {
          frozen(run, trace).ifPresent(faults::add);
          jumped(run.grid(), trace).ifPresent(faults::add);
        }
      }
    }
    return faults;
  }

  /** Rows are there but this sensor has no value in them. */
  private static Optional<SensorFault> silent(Grid grid, Trace trace) {
    Channel channel = trace.channel();
    int size = channel.series().size();
    int longest = 0;
    int longestEnd = -1;
    int current = 0;
    for (int i = 0; i < size; i++) {
      Quality quality = channel.series().quality(i);
      current = quality == Quality.GOOD || quality == Quality.OFF ? 0 : current + 1;
      if (current > longest) {
        longest = current;
        longestEnd = i;
      }
    }
    if (longest < 3 || longest == size) {
      return Optional.empty();
    }
    double end_s = grid.secondOfRow(longestEnd);
    double start_s = grid.secondOfRow(longestEnd - longest + 1);
    if (end_s - start_s < SILENT_S) {
      return Optional.empty();
    }
    Stretch stretch = new Stretch(grid.pointAt(start_s), grid.pointAt(end_s));
    return Optional.of(new SensorFault(trace, stretch, "no value"));
  }

  private static Optional<SensorFault> frozen(Run run, Trace trace) {
    Stretch still = longestStill(trace.signal());
    int points = still.end() - still.start();
    boolean lasts = points >= FROZEN_POINTS && points * run.grid().step_s() >= FROZEN_S;
    boolean fails = lasts && (waversBefore(run, trace, still) || shelfMoves(run, still));
    return fails
        ? Optional.of(new SensorFault(trace, still, "one value without noise"))
        : Optional.empty();
  }

  private static Stretch longestStill(Signal signal) {
    Stretch longest = new Stretch(0, 0);
    int start = 0;
    for (int i = 1; i < signal.size(); i++) {
      if (signal.at(i) != signal.at(i - 1)) {
        start = i;
      } else if (i - start > longest.end() - longest.start()) {
        longest = new Stretch(start, i);
      }
    }
    return longest;
  }

  /** Whether the sensor wavers by more than its last digit in the hour before. */
  private static boolean waversBefore(Run run, Trace trace, Stretch still) {
    Signal signal = trace.signal();
    int from = Math.max(0, still.start() - run.grid().steps(3600));
    double digit = Double.POSITIVE_INFINITY;
    for (int i = from + 1; i < still.start(); i++) {
      double change = Math.abs(signal.at(i) - signal.at(i - 1));
      digit = change > 1e-6 ? Math.min(digit, change) : digit;
    }
    Signal before = signal.without(0, from).without(still.start(), signal.size());
    boolean enough = still.start() - from >= FROZEN_POINTS;
    return enough && before.noise() > MORE_THAN_DIGITS * digit;
  }

  private static boolean shelfMoves(Run run, Stretch still) {
    return run.first(Role.SHELF)
        .map(Trace::signal)
        .map(
            shelf ->
                shelf.quantileIn(still.start(), still.end() + 1, 0.95)
                        - shelf.quantileIn(still.start(), still.end() + 1, 0.05)
                    > MOVED_K)
        .orElse(false);
  }

  private static Optional<SensorFault> jumped(Grid grid, Trace trace) {
    Signal signal = trace.signal();
    double limit = Math.max(Math.max(JUMP_K, 12 * signal.noise()), FASTEST_K_PER_S * grid.step_s());
    double before = Double.NaN;
    for (int i = 0; i < signal.size(); i++) {
      double value = signal.at(i);
      if (Double.isNaN(value)) {
        // Behind a long silence anything may have changed.
        continue;
      }
      boolean near = i > 0 && !Double.isNaN(signal.at(i - 1));
      boolean jumps = near && Math.abs(value - before) > limit;
      if (jumps && !isFirstIce(trace, before, value) && !isFreezing(trace, before, value)) {
        int back = back(signal, i, before);
        boolean spike = back > 0 && (back - i) * grid.step_s() < SPIKE_S;
        if (spike) {
          i = back - 1;
          continue;
        }
        int end = back > 0 ? back - 1 : signal.size() - 1;
        String seen = "jumps by " + Spoken.kelvin(value - before) + " in one step";
        return Optional.of(new SensorFault(trace, new Stretch(i, end), seen));
      }
      before = value;
    }
    return Optional.empty();
  }

  /** The layer of ice on the thermometer leaves the freezing point fast once it has formed. */
  private static boolean isFreezing(Trace trace, double before, double value) {
    return trace.channel().role().isVesselThermometer()
        && value < before
        && before > WATER_FREEZES_K - FREEZING_POINTS_K
        && before < WATER_FREEZES_K + 1;
  }

  /** A supercooled liquid jumps to its freezing point when the first ice forms: no fault. */
  private static boolean isFirstIce(Trace trace, double before, double value) {
    return trace.channel().role().isVesselThermometer()
        && value > before
        && value > WATER_FREEZES_K - FREEZING_POINTS_K
        && value < WATER_FREEZES_K + 1;
  }

  /** First point behind a jump at which the old level stands again for a while; -1 if never. */
  private static int back(Signal signal, int from, double level) {
    for (int i = from + 1; i < signal.size(); i++) {
      boolean here = Math.abs(signal.at(i) - level) < BACK_K;
      boolean stays = Math.abs(signal.medianIn(i, i + 5) - level) < BACK_K;
      if (here && stays) {
        return i;
      }
    }
    return -1;
  }
}
