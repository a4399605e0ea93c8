package org.firnline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.firnline.drying.cycle.BoundWater;
import org.firnline.drying.cycle.CycleDryer;
import org.firnline.drying.cycle.CycleSchedule;
import org.firnline.drying.cycle.CycleSimulation;
import org.firnline.drying.cycle.CycleVessel;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.recipe.Track;
import org.firnline.drying.secondary.Desorption;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A cycle of sixty hours with the dryer around one vial: freezing to backfill. */
@Question(
    asks = "How many whole cycles of one vial can be simulated?",
    counts = "cycles",
    baseline =
        "the Dormand–Prince 8(5,3) integrator of Hipparchus in time at tolerance 1e-5, from the"
            + " start of primary drying to the last ice and no further, on the reference front"
            + " balance",
    trap =
        "The baseline does less: no freezing, chamber, collector, secondary drying or channels."
            + " Both end primary drying within 1e-4 of the exact time (a test holds them); for that"
            + " the cycle steps four minutes, the baseline as far as it likes.")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WholeCycle {
  static final double TOLERANCE = 1e-5;

  private static final double END_S = 60 * 3_600;

  private final List<MarchInTime.Vial> vials = RampedVials.all();
  private int turn;

  @Benchmark
  public double firnline() {
    return endOfIce(next(), true);
  }

  @Benchmark
  public double baseline() {
    return new MarchInTime(next(), TOLERANCE).dryingTime();
  }

  /**
   * End of ice in the cycle, s after its start.
   *
   * @param freezing whether it starts with liquid; otherwise with frozen product under vacuum
   */
  static double endOfIce(MarchInTime.Vial vial, boolean freezing) {
    double evacuation = freezing ? 4 * 3_600 : 0;
    var shelf =
        Track.through(
            List.of(
                new Track.Point(evacuation, vial.start_K()),
                new Track.Point(evacuation + vial.rampTime(), vial.shelf_K()),
                new Track.Point(END_S - 6 * 3_600, vial.shelf_K()),
                new Track.Point(END_S, 293)));
    var schedule =
        new CycleSchedule(
            shelf, Track.constant(vial.pressure_Pa()), evacuation, END_S - 6 * 3_600, END_S, END_S);
    return new CycleSimulation(
            List.of(vessel(vial, freezing)),
            dryer(freezing),
            schedule,
            List.of(),
            CycleSimulation.QUICK_STEP)
        .run(0)
        .lastEndOfIce();
  }

  private static CycleVessel vessel(MarchInTime.Vial vial, boolean freezing) {
    CycleVessel frozen =
        CycleVessel.of(1, vial.vessel(), ShelfHeat.of(vial.heat()), vial.mass())
            .holding(BoundWater.of(new Desorption(670, 40_000, 0.003), 0.2, 1.5e-4));
    return freezing ? frozen.freezing(new CycleVessel.Freezing(262, 272, 12)) : frozen;
  }

  private static CycleDryer dryer(boolean usual) {
    return new CycleDryer(
        VaporPath.UNLIMITED,
        usual ? 0.12 : 1e-9,
        0.004,
        0,
        1,
        203,
        usual ? CycleDryer.Surroundings.USUAL : new CycleDryer.Surroundings(295, 14_400, 1),
        0.6,
        1_333);
  }

  private MarchInTime.Vial next() {
    turn = (turn + 1) % vials.size();
    return vials.get(turn);
  }
}
