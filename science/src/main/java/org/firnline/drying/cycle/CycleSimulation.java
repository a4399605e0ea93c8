package org.firnline.drying.cycle;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A whole cycle: freezing, evacuation, primary drying, secondary drying and backfill of many
 * different vessels that share shelf, pressure and collector, with what goes wrong on the way.
 *
 * <p>Steps of {@code longestStep}, shorter while the chamber is evacuated and around incidents and
 * bends of the schedule. The answer is the same to the last bit whatever the machine.
 *
 * <p>Vials, trays, puddles, pieces and shells share one chamber; a piece and a tray also get heat
 * from above, a flask from the room. Annealing acts on the cake of each vessel that has one to lose
 * by it; the least distance of dry cake from its glass transition is kept vessel by vessel.
 *
 * <p>Left out: sensible heat of the vapor, heat of desorption, loss of bound water before the last
 * ice is gone, vapor deposited on cold vessels.
 *
 * <p>Source: derivation in docs/science.md.
 *
 * @param vessels at least one
 * @param dryer around them
 * @param schedule what it is told
 * @param incidents what goes wrong; may be empty
 * @param longestStep s; positive
 */
public record CycleSimulation(
    List<CycleVessel> vessels,
    CycleDryer dryer,
    CycleSchedule schedule,
    List<Incident> incidents,
    double longestStep) {

  /** Step for logs, s: drying times within 1e-5 of a fine march. */
  public static final double USUAL_STEP = 60;

  /** Step for quick answers, s: drying times within 1e-4 of a fine march. */
  public static final double QUICK_STEP = 240;

  public CycleSimulation {
    vessels = List.copyOf(vessels);
    incidents = List.copyOf(incidents);
    if (vessels.isEmpty()) {
      throw new IllegalArgumentException("a cycle without vessels");
    }
    if (!(longestStep > 0)) {
      throw new IllegalArgumentException("step " + longestStep + " s is not positive");
    }
  }

  /**
   * Runs the cycle.
   *
   * @param watched indices of the vessels whose product temperature is followed
   */
  public CycleRun run(int... watched) {
    CycleMarch march = new CycleMarch(this, watched);
    march.run();
    return new CycleRun(
        schedule,
        march.moments(),
        IntStream.range(0, vessels.size())
            .mapToObj(i -> VesselFate.of(march.vessels(), i))
            .toList(),
        march.vacuumReached(),
        march.massError(),
        march.energyError(),
        march.collector());
  }

  /** Times at which settings bend, phases change or incidents begin or end, s; rising. */
  double[] bends() {
    DoubleStream settings =
        DoubleStream.concat(
            DoubleStream.of(schedule.shelf().bends()),
            DoubleStream.of(schedule.pressure().bends()));
    DoubleStream phases =
        DoubleStream.of(schedule.evacuation(), schedule.secondary(), schedule.backfill());
    DoubleStream troubles =
        incidents.stream().flatMapToDouble(wrong -> DoubleStream.of(wrong.start(), wrong.end()));
    DoubleStream stays =
        vessels.stream()
            .map(CycleVessel::stay)
            .flatMapToDouble(stay -> DoubleStream.of(stay.from(), stay.until()));
    return DoubleStream.concat(
            DoubleStream.concat(settings, phases), DoubleStream.concat(troubles, stays))
        .filter(time -> time > 0 && time < schedule.end())
        .sorted()
        .distinct()
        .toArray();
  }
}
