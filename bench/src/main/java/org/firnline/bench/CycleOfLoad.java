package org.firnline.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.firnline.drying.cycle.BoundWater;
import org.firnline.drying.cycle.CycleDryer;
import org.firnline.drying.cycle.CycleRun;
import org.firnline.drying.cycle.CycleSchedule;
import org.firnline.drying.cycle.CycleSimulation;
import org.firnline.drying.cycle.CycleVessel;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ScheduledRun;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.recipe.Track;
import org.firnline.drying.secondary.Desorption;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;
import org.firnline.lab.Solution;
import org.firnline.lab.Vial;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A thousand different vials through a cycle of 58 hours that they share. */
@Question(
    asks = "How many vials of a shared load can be followed through a whole 58-hour cycle?",
    counts = "vials",
    perCall = CycleOfLoad.VIALS,
    baseline =
        "one vial at a time through primary drying alone, by the march of order five with error"
            + " control that the cycle is tested against",
    trap =
        "The baseline does less (no freezing, no shared pressure, no secondary drying) and is more"
            + " exact (1e-9 against 1e-5); it says what following every vial by the careful march"
            + " would cost. One thread on both sides.")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class CycleOfLoad {
  static final int VIALS = 1_000;

  private static final double RAMP = 0.5 / 60;

  private final List<CycleVessel> load =
      IntStream.range(0, VIALS).mapToObj(CycleOfLoad::vial).toList();
  private final CycleSchedule schedule = CycleSchedule.of(recipe());
  private final Schedule primary = new Schedule(Track.constant(253.15), Track.constant(10));
  private int turn;

  @Benchmark
  public CycleRun firnline() {
    return new CycleSimulation(load, dryer(), schedule, List.of(), CycleSimulation.USUAL_STEP)
        .run(0);
  }

  /** As many vials as one call of the other side, so that both count the same. */
  @Benchmark
  public double baseline() {
    double sum = 0;
    for (int i = 0; i < VIALS; i++) {
      turn = (turn + 1) % VIALS;
      CycleVessel vial = load.get(turn);
      ScheduledRun run =
          ScheduledDrying.withStoredHeat(vial.vessel(), vial.heat(), primary, vial.mass(), 228.15);
      sum += run.time();
    }
    return sum;
  }

  private static CycleVessel vial(int number) {
    Vial vial = Iso8362Vial.R10.nominal();
    Slab slab = Slab.of(Solution.typical(1020, 0.05), 3e-6, vial.innerArea(), vial.outerArea());
    CakeResistance cake =
        new CakeResistance(4.8e4, 4.8e7, 0).times(1.25 - 0.5 * (number * 7 % VIALS) / VIALS);
    return CycleVessel.of(
            1,
            new DryingVessel(slab, cake, 0),
            ShelfHeat.of(vial.heatTransfer().times(0.9 + 0.4 * number / VIALS)),
            new ThermalMass(4, 6))
        .freezing(new CycleVessel.Freezing(264 - 8.0 * (number * 3 % VIALS) / VIALS, 272.15, 12))
        .holding(BoundWater.of(new Desorption(670, 40_000, 0.003), 0.2, 1.5e-4));
  }

  private static CycleDryer dryer() {
    var path = new VaporPath(List.of(new MeasuredLine(2e-5, 0)), 0);
    return new CycleDryer(
        path, 0.3, 0.01, 1e-3, 1.0 / 60, 203.15, CycleDryer.Surroundings.USUAL, 0.6, 1333);
  }

  private static Recipe recipe() {
    return new Recipe(
        "invented",
        293.15,
        List.of(
            step(RecipePhase.FREEZING, 228.15, OptionalDouble.empty(), 2),
            step(RecipePhase.EVACUATION, 228.15, OptionalDouble.of(10), 0.25),
            step(RecipePhase.PRIMARY_DRYING, 253.15, OptionalDouble.of(10), 44),
            step(RecipePhase.SECONDARY_DRYING, 298.15, OptionalDouble.of(10), 6.5),
            step(RecipePhase.BACKFILL, 298.15, OptionalDouble.empty(), 0.25)));
  }

  private static RecipeStep step(
      RecipePhase phase, double target_K, OptionalDouble pressure_Pa, double hold_h) {
    return new RecipeStep(phase, target_K, RAMP, pressure_Pa, hold_h * 3_600);
  }
}
