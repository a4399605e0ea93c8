package org.firnline.review.simulated;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.firnline.drying.cycle.BoundWater;
import org.firnline.drying.cycle.CycleDryer;
import org.firnline.drying.cycle.CycleLogger;
import org.firnline.drying.cycle.CycleRun;
import org.firnline.drying.cycle.CycleSchedule;
import org.firnline.drying.cycle.CycleSimulation;
import org.firnline.drying.cycle.CycleVessel;
import org.firnline.drying.cycle.Incident;
import org.firnline.drying.cycle.LoggedChannel.Kind;
import org.firnline.drying.cycle.Sensor;
import org.firnline.drying.cycle.SensorFailure;
import org.firnline.drying.cycle.VesselDraw;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.recipe.Track;
import org.firnline.drying.sampling.Spread;
import org.firnline.drying.secondary.Desorption;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;

/**
 * Draws runs of invented vials on an invented dryer: product, recipe, machine, sensors, sampling
 * and the channels that are written all differ from run to run; the same number draws the same run.
 */
final class RunDraw {
  private static final double HOUR_S = 3_600;
  private static final int VIALS = 30;
  private static final double ALIKE = 6;
  private static final Slab SLAB =
      new Slab(0.002905575, 0.008589174483798324, 3.801e-4, 4.524e-4, 2.3);
  private static final HeatTransfer TUBING = new HeatTransfer(10, 1.04, 0.0231);

  private final Chance chance;
  private final Logged logged;
  private double interval_s;
  private Function<CycleRun, List<Incident>> incidents = run -> List.of();
  private Function<CycleRun, List<SensorFailure>> failures = run -> List.of();
  private double soak;
  private double loadFactor = 1;
  private double alwaysLeaks = 1e-3;

  RunDraw(long number, Logged logged) {
    this.chance = new Chance(number);
    this.logged = logged;
    this.interval_s = chance.oneOf("interval", List.of(5.0, 10.0, 30.0, 60.0, 60.0, 120.0, 300.0));
    this.soak = chance.uniform("soak", 0.06, 0.25);
  }

  RunDraw every(double seconds) {
    interval_s = seconds;
    return this;
  }

  /** Incidents, placed by what the same run does without them. */
  RunDraw with(Function<CycleRun, List<Incident>> wrong) {
    incidents = wrong;
    return this;
  }

  RunDraw failing(Function<CycleRun, List<SensorFailure>> wrong) {
    failures = wrong;
    return this;
  }

  /** Heat for secondary drying this share of primary drying after the last ice; may be negative. */
  RunDraw soak(double share) {
    soak = share;
    return this;
  }

  RunDraw timesLoad(double factor) {
    loadFactor = factor;
    return this;
  }

  RunDraw leaking(double leak_Pa_m3_per_s) {
    alwaysLeaks = leak_Pa_m3_per_s;
    return this;
  }

  SimulatedRun draw() {
    List<CycleVessel> vessels = vessels();
    CycleDryer dryer = dryer();
    CycleRun first =
        simulate(
            vessels,
            dryer,
            schedule(400 * HOUR_S),
            List.of(),
            List.of(),
            CycleSimulation.QUICK_STEP);
    double primary = first.lastEndOfIce() - first.vacuumReached();
    CycleSchedule schedule = schedule(first.lastEndOfIce() + soak * primary);
    List<Incident> wrong = incidents.apply(first);
    List<Integer> watched = watched(first);
    CycleRun run = simulate(vessels, dryer, schedule, wrong, watched, CycleSimulation.USUAL_STEP);
    CycleLogger logger =
        new CycleLogger(interval_s, sensors(), failures.apply(first), chance.number());
    return new SimulatedRun(
        chance.number(),
        logged,
        LogOf.simulated(logger.log(run, dryer), logged, schedule),
        run,
        dryer,
        watched,
        wrong);
  }

  private static CycleRun simulate(
      List<CycleVessel> vessels,
      CycleDryer dryer,
      CycleSchedule schedule,
      List<Incident> wrong,
      List<Integer> watched,
      double step_s) {
    return new CycleSimulation(vessels, dryer, schedule, wrong, step_s)
        .run(watched.stream().mapToInt(i -> i).toArray());
  }

  private List<CycleVessel> vessels() {
    double fill = chance.uniform("fill", 0.6, 1.4);
    double solids = chance.uniform("solids", 0.6, 1.6);
    Slab slab = SLAB.filledBy(fill);
    var cake = new CakeResistance(4.8e4 * solids, 4.8e7 * solids, 0);
    CycleVessel typical =
        CycleVessel.of(
                1,
                new DryingVessel(slab, cake, 0),
                ShelfHeat.of(TUBING.times(chance.uniform("heat", 0.8, 1.3))),
                new ThermalMass(4, 6 * fill))
            .freezing(new CycleVessel.Freezing(260, 272.15, 12.2 * fill))
            .holding(
                BoundWater.of(new Desorption(670.179127262, 40_000, 0.003), 0.2, 1.53e-4 * fill));
    List<Double> nucleation =
        IntStream.range(0, VIALS).mapToObj(i -> 262 + chance.normal("nucleation" + i, 2)).toList();
    var spread = new Spread(0.06, chance.uniform("spread", 0.05, 0.15), 0.01);
    List<CycleVessel> alike = new VesselDraw(spread, chance.number()).about(typical, nucleation);
    return IntStream.range(0, VIALS)
        .mapToObj(i -> i % 5 == 0 ? edge(alike.get(i)) : many(alike.get(i), 1))
        .toList();
  }

  private CycleVessel edge(CycleVessel vial) {
    return many(vial, chance.uniform("edge", 1.1, 1.4));
  }

  private CycleVessel many(CycleVessel vial, double heat) {
    return new CycleVessel(
        ALIKE * loadFactor,
        vial.vessel(),
        vial.heat().times(heat),
        vial.mass(),
        vial.freezing(),
        vial.water(),
        vial.annealing(),
        vial.critical(),
        vial.stay());
  }

  private CycleDryer dryer() {
    var path = new VaporPath(List.of(new MeasuredLine(2.5e-6, 0)), 0);
    return new CycleDryer(
        path,
        0.12,
        0.004,
        alwaysLeaks,
        1.0 / 60,
        203.15,
        CycleDryer.Surroundings.USUAL,
        chance.uniform("gauge", 0.5, 0.7),
        1333);
  }

  private CycleSchedule schedule(double secondary_s) {
    double freeze = chance.uniform("freeze", 223.15, 233.15);
    double hold = chance.uniform("shelf", 245.15, 260.15);
    double warm = chance.uniform("warm", 293.15, 308.15);
    double pressure = chance.uniform("pressure", 6, 16);
    double ramp = chance.logUniform("ramp", 0.3, 1.0) / 60;
    double frozen = (293.15 - freeze) / ramp;
    double evacuation = frozen + chance.uniform("frozen", 1.5, 3) * HOUR_S;
    double heat = evacuation + chance.uniform("wait", 0.3, 0.8) * HOUR_S;
    double up = heat + (hold - freeze) / ramp;
    double secondary = Math.max(up + HOUR_S, secondary_s);
    double warmRamp = chance.uniform("warm ramp", 0.15, 0.4) / 60;
    double backfill = secondary + (warm - hold) / warmRamp + chance.uniform("dry", 2, 6) * HOUR_S;
    return new CycleSchedule(
        Track.through(
            List.of(
                new Track.Point(0, 293.15),
                new Track.Point(frozen, freeze),
                new Track.Point(heat, freeze),
                new Track.Point(up, hold),
                new Track.Point(secondary, hold),
                new Track.Point(secondary + (warm - hold) / warmRamp, warm),
                new Track.Point(backfill + 1_200, warm))),
        Track.constant(pressure),
        evacuation,
        secondary,
        backfill,
        backfill + 1_200);
  }

  /** A thermometer makes its vessel dry early: the probed ones are of the earlier half. */
  private List<Integer> watched(CycleRun run) {
    List<Integer> early =
        IntStream.range(0, VIALS)
            .boxed()
            .sorted(Comparator.comparing(i -> run.fates().get(i).endOfIce()))
            .limit(VIALS / 2)
            .toList();
    List<Integer> watched = new ArrayList<>();
    for (int probe = 0; probe < logged.thermometers(); probe++) {
      int place = probe * 5 + (int) chance.uniform("probe" + probe, 0, 5);
      watched.add(early.get(place));
    }
    return watched;
  }

  private Map<Kind, Sensor> sensors() {
    Map<Kind, Sensor> sensors = new EnumMap<>(Kind.class);
    double resolution = chance.oneOf("digits", List.of(0.01, 0.1, 0.1));
    double noise = chance.logUniform("noise", 0.02, 0.15);
    sensors.put(
        Kind.PRODUCT,
        new Sensor(
            chance.uniform("bias", -0.5, 0.5),
            0,
            noise,
            chance.logUniform("lag", 5, 90),
            resolution));
    sensors.put(
        Kind.SHELF, new Sensor(chance.uniform("shelf bias", -0.3, 0.3), 0, noise, 20, resolution));
    sensors.put(Kind.COLLECTOR, new Sensor(0, 0, 0.2, 30, 0.1));
    double gaugeNoise = chance.logUniform("gauge noise", 0.002, 0.015);
    sensors.put(Kind.CAPACITANCE_GAUGE, new Sensor(0, gaugeNoise, 0.005, 2, 0.001));
    sensors.put(
        Kind.THERMAL_GAUGE,
        new Sensor(0, gaugeNoise, 0.02, chance.logUniform("gauge lag", 2, 60), 0.01));
    return sensors;
  }
}
