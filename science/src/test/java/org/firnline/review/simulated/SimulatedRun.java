package org.firnline.review.simulated;

import java.time.Instant;
import java.util.List;
import org.firnline.drying.cycle.CycleDryer;
import org.firnline.drying.cycle.CycleRun;
import org.firnline.drying.cycle.Incident;
import org.firnline.drying.gauge.EndMarks;
import org.firnline.drying.gauge.RatioCurve;
import org.firnline.drying.gauge.RatioPoint;
import org.firnline.logs.Log;

/**
 * A simulated run as a dryer logged it, with the truth about it.
 *
 * @param number of the draw
 * @param logged which channels were written
 * @param log what a review sees
 * @param run what really happened
 * @param dryer the machine
 * @param watched the vessels with a thermometer, in the order of the channels
 * @param incidents what went wrong
 */
record SimulatedRun(
    long number,
    Logged logged,
    Log log,
    CycleRun run,
    CycleDryer dryer,
    List<Integer> watched,
    List<Incident> incidents) {

  static final Instant START = Instant.parse("2026-03-02T07:00:00Z");

  /** From the vacuum to the last ice, s. */
  double primary_s() {
    return run.lastEndOfIce() - vacuum_s();
  }

  /** When the true pressure first comes within a tenth of its set point, s. */
  double vacuum_s() {
    return run.moments().stream()
        .filter(moment -> moment.time() > run.schedule().evacuation())
        .filter(moment -> moment.pressure() < 1.1 * run.schedule().pressure().at(moment.time()))
        .findFirst()
        .orElseThrow()
        .time();
  }

  double endOfIce(int probe) {
    return run.fates().get(watched.get(probe)).endOfIce();
  }

  /** Onset, midpoint and end of the true ratio, by the definition in the physics of the gauges. */
  EndMarks marks() {
    List<RatioPoint> points =
        run.moments().stream()
            .map(m -> new RatioPoint(m.time(), 1 + dryer.vaporExcess() * m.vaporShare()))
            .toList();
    double from = vacuum_s() + 1_800;
    return new RatioCurve(points).within(from, run.schedule().secondary()).marks();
  }

  static double second(Instant moment) {
    return (moment.toEpochMilli() - START.toEpochMilli()) / 1_000.0;
  }
}
