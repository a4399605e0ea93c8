package org.firnline.learning.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ScheduledRun;
import org.firnline.drying.recipe.ShelfStep;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.recipe.Track;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.numerics.SeededUniform;

/** Runs of one probed vessel whose truth is drawn from the priors, with noise on what is read. */
final class SimulatedRuns {

  static final HeatTransfer TUBING = new HeatTransfer(10, 1.04, 0.0231);
  static final RunPriors PRIORS =
      new RunPriors(
          TUBING,
          new Prior(1, 0.2),
          new Prior(5e4, 0.4),
          new Prior(5e7, 0.4),
          new Prior(100, 0.5),
          new Prior(0, 0.3));

  private static final Slab SLAB =
      new Slab(0.0029055750000000005, 0.008589174483798324, 3.801e-4, 4.524e-4, 2.3);
  private static final ThermalMass MASS = new ThermalMass(4, 6);
  private static final int READINGS = 40;
  private static final double NOISE_K = 0.1;
  private static final double END_DOUBT = 0.01;

  /** What was drawn: a factor, R_0, A_1, A_2, offset; and what it would show. */
  record Drawn(double[] truth, ProbedVessel vessel) {}

  private SimulatedRuns() {}

  static Drawn draw(long seed, int run) {
    SeededUniform chance = new SeededUniform(seed);
    double[] truth = new double[5];
    for (Parameter parameter : Parameter.values()) {
      Prior prior = PRIORS.of(parameter);
      int index = List.of(Parameter.values()).indexOf(parameter);
      double deviation = prior.spread() * chance.normalAt(run, index, 0);
      truth[index] = parameter.isLogarithmic() ? prior.best() * Math.exp(deviation) : deviation;
    }
    Schedule schedule = schedule(chance, run);
    double length = 0.85 * truth(truth, schedule).time();
    List<Track.Point> stops = new ArrayList<>();
    for (int i = 0; i <= READINGS; i++) {
      stops.add(new Track.Point(length * i / READINGS, schedule.pressure().at(0)));
    }
    ScheduledRun truly = truth(truth, new Schedule(schedule.shelf(), Track.through(stops)));
    List<ProbedVessel.TemperatureReading> readings = new ArrayList<>();
    for (int i = 1; i <= READINGS; i++) {
      double time = stops.get(i).time();
      readings.add(
          new ProbedVessel.TemperatureReading(
              time, bottom(truly, time) + truth[4] + NOISE_K * chance.normalAt(run, 10, i)));
    }
    double doubt = END_DOUBT * truly.time();
    var end = new ProbedVessel.EndOfIce(truly.time() + doubt * chance.normalAt(run, 11, 0), doubt);
    return new Drawn(
        truth,
        new ProbedVessel("run " + run, SLAB, MASS, schedule, 228.15, readings, Optional.of(end)));
  }

  /** The integrator stops at every bend, so that a reading falls on one of its steps. */
  private static ScheduledRun truth(double[] truth, Schedule schedule) {
    return ScheduledDrying.withStoredHeat(
        new DryingVessel(SLAB, new CakeResistance(truth[1], truth[2], truth[3]), 0),
        ShelfHeat.of(TUBING.times(truth[0])),
        schedule,
        MASS,
        228.15);
  }

  private static Schedule schedule(SeededUniform chance, int run) {
    double shelf = 248.15 + 10 * chance.at(run, 20, 0);
    double pressure = 6 + 9 * chance.at(run, 21, 0);
    return Schedule.of(
        228.15, List.of(new ShelfStep(shelf, 0.5 / 60, 0)), List.of(new Track.Point(0, pressure)));
  }

  private static double bottom(ScheduledRun run, double time) {
    return run.course().stream()
        .filter(moment -> Math.abs(moment.time() - time) < 1e-3)
        .findFirst()
        .orElseThrow()
        .bottomTemperature();
  }
}
