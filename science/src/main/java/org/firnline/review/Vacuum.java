package org.firnline.review;

import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.review.signal.Signal;

/**
 * When the chamber is under vacuum, as grid points.
 *
 * @param pumpStart the pump starts to empty the chamber; 0 if the log starts under way
 * @param sawPumpStart whether the log holds the chamber at the atmosphere before
 * @param working the pressure reaches its working level
 * @param vented air is let in for good; the number of points if the log ends before
 * @param working_Pa the working level, Pa
 * @param confidence how sure
 */
record Vacuum(
    int pumpStart,
    boolean sawPumpStart,
    int working,
    int vented,
    double working_Pa,
    Confidence confidence) {

  /** Between the atmosphere and anything a dryer works at. */
  private static final double UNDER_VACUUM_PA = 1000;

  /** Leaving the atmosphere: weather and altitude move it less than this share. */
  private static final double LEAVES_ATMOSPHERE = 0.9;

  private static final double SETTLED = 1.3;
  private static final double FIRST_HOURS_S = 4 * 3600;

  /** A run whose log shows no vacuum. */
  static Vacuum never(int size) {
    return new Vacuum(0, false, 0, size, Double.NaN, Confidence.LOW);
  }

  boolean sawVent(int size) {
    return vented < size;
  }

  /** The vacuum of a run; empty if no gauge ever shows one. */
  static Optional<Vacuum> of(Run run) {
    Optional<Trace> wide = run.widestGauge();
    if (wide.isEmpty()) {
      return Optional.empty();
    }
    Signal pressure = wide.get().signal().median(3);
    int size = run.size();
    int below = pressure.firstBelow(UNDER_VACUUM_PA, 0, size);
    if (below < 0) {
      return Optional.empty();
    }
    int vented = vented(run);
    double full = pressure.quantileIn(0, Math.max(1, below), 1);
    boolean sawStart = below > 0 && full > 10 * UNDER_VACUUM_PA;
    int start = sawStart ? start(pressure, below) : startWhileSilent(run, below);
    boolean saw = sawStart || start > 0;
    int working = working(run, below, vented);
    double level = level(run, below, vented);
    return Optional.of(
        new Vacuum(start, saw, working, vented, level, saw ? Confidence.HIGH : Confidence.MEDIUM));
  }

  /** One past the last point at which every gauge that speaks still shows a vacuum. */
  private static int vented(Run run) {
    int size = run.size();
    int vented = size;
    for (Trace trace : run.all()) {
      if (trace.channel().role().isChamberPressure()) {
        int next = trace.signal().lastBelow(UNDER_VACUUM_PA, 0, size) + 1;
        boolean speaks = next > 0 && trace.signal().goodIn(next, size) > 0;
        vented = speaks ? Math.min(vented, next) : vented;
      }
    }
    return vented;
  }

  private static int start(Signal pressure, int below) {
    double atmosphere = pressure.quantileIn(0, below, 1);
    int last = pressure.lastAbove(LEAVES_ATMOSPHERE * atmosphere, 0, below);
    return Math.max(0, last);
  }

  /** A gauge that says nothing at the atmosphere speaks first when the chamber is being emptied. */
  private static int startWhileSilent(Run run, int below) {
    int start = below;
    for (Trace trace : run.all()) {
      if (trace.channel().role().isChamberPressure()) {
        Signal signal = trace.signal();
        double top = signal.quantileIn(0, below, 0.9);
        int leaves = signal.lastAbove(LEAVES_ATMOSPHERE * top, 0, below + 1);
        boolean stopped = top > 0 && signal.quantileIn(0, below, 0.5) >= top * 0.999;
        start = stopped && leaves >= 0 ? Math.min(start, leaves) : start;
        int first = firstGood(signal, below);
        start = first > 0 ? Math.min(start, first) : start;
      }
    }
    return start == below && below < 3 ? 0 : start;
  }

  private static int firstGood(Signal signal, int before) {
    for (int i = 0; i < before; i++) {
      if (!Double.isNaN(signal.at(i))) {
        return i;
      }
    }
    return -1;
  }

  private static double level(Run run, int below, int vented) {
    Signal pressure = run.truestGauge().orElseThrow().signal();
    int settle = below + run.grid().steps(1800);
    int hours = Math.min(vented, settle + run.grid().steps(FIRST_HOURS_S));
    double level = pressure.medianIn(settle, hours);
    return Double.isNaN(level) ? pressure.medianIn(below, vented) : level;
  }

  private static int working(Run run, int below, int vented) {
    Signal pressure = run.truestGauge().orElseThrow().signal().median(3);
    int reached = pressure.firstBelow(SETTLED * level(run, below, vented), below, vented);
    return reached < 0 ? below : reached;
  }
}
