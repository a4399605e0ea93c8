package org.firnline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ShelfStep;
import org.firnline.drying.recipe.Track;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A vial that stores heat, under a shelf ramp and hold, to the last ice. */
@Question(
    asks = "How many vials that store heat can be followed through a shelf ramp?",
    counts = "vials",
    baseline =
        "the Dormand–Prince 8(5,3) integrator of Hipparchus in time at tolerance 1e-9, with its own"
            + " search for the last ice, on the reference front balance",
    trap =
        "Both sides solve the same two equations and agree within 1e-7 in time (a test holds them)."
            + " Firnline steps at most ten minutes so that its curve can be drawn, the baseline as"
            + " far as it likes. Most of the ratio comes from tabulated ice and from starting each"
            + " front where the last one was, not from the integrator.")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StoredHeat {
  static final double TOLERANCE = 1e-9;

  /** Longer than any of them needs, s. */
  private static final double HOLD_S = 1e7;

  private final List<MarchInTime.Vial> vials = RampedVials.all();
  private int turn;

  @Benchmark
  public double firnline() {
    return ours(next());
  }

  @Benchmark
  public double baseline() {
    return new MarchInTime(next(), TOLERANCE).dryingTime();
  }

  static double ours(MarchInTime.Vial vial) {
    var schedule =
        Schedule.of(
            vial.start_K(),
            List.of(new ShelfStep(vial.shelf_K(), vial.ramp_K_per_s(), HOLD_S)),
            List.of(new Track.Point(0, vial.pressure_Pa())));
    return ScheduledDrying.withStoredHeat(
            vial.vessel(), ShelfHeat.of(vial.heat()), schedule, vial.mass(), vial.start_K())
        .time();
  }

  private MarchInTime.Vial next() {
    turn = (turn + 1) % vials.size();
    return vials.get(turn);
  }
}
