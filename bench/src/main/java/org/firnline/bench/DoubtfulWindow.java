package org.firnline.bench;

import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.firnline.drying.load.ResolvedLoad;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.lab.Range;
import org.firnline.numerics.Normal;
import org.firnline.numerics.SobolPoints;
import org.firnline.planning.forecast.LoadForecaster;
import org.firnline.planning.forecast.Sharing;
import org.firnline.planning.forecast.WindowDrawer;
import org.firnline.planning.forecast.WindowWithDoubt;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The window map of 60 by 60 cells with 128 drawn runs in every cell. */
@Question(
    asks = "How many window maps of 60 × 60 cells with 128 runs in every cell can be drawn?",
    counts = "maps",
    baseline = "every run of every cell dried one by one by the kernel of the window map",
    trap =
        "Both sides use all cores. The map looks its runs up on parabolas through nine trajectories,"
            + " which a test holds to the march of every run within 1 % in time; the baseline dries"
            + " one vial a run, the map answers for the typical, last and warmest at two places. Wanted"
            + " are two maps a second on two idle cores.")
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 2)
public class DoubtfulWindow {
  static final int SIDE = 60;
  private static final double RISK = 0.05;
  private static final double SPREAD = 0.15;
  private static final long SEED = 1;

  private final Sharing sharing = PlanningLoads.thousandVials();

  @Benchmark
  public WindowWithDoubt firnline() {
    return new WindowDrawer(sharing, RISK).draw(SIDE, SIDE);
  }

  @Benchmark
  public double baseline() {
    Range shelf = sharing.dryer().shelfTemperature();
    Range pressure = sharing.dryer().pressure();
    return IntStream.range(0, SIDE * SIDE)
        .parallel()
        .mapToDouble(cell -> cell(at(shelf, cell / SIDE), at(pressure, cell % SIDE)))
        .sum();
  }

  private double cell(double shelf_K, double pressure_Pa) {
    VesselGroup group =
        ResolvedLoad.groups(sharing.load().portions().get(0).item(), sharing.room_K()).get(0);
    double sum = 0;
    for (double[] point : SobolPoints.of(LoadForecaster.RUNS, 2, SEED)) {
      sum +=
          FastPrimaryDrying.run(
                  group.vessel().varied(1, Math.exp(SPREAD * Normal.quantile(point[0]))),
                  group
                      .heat()
                      .times(Math.exp(SPREAD * Normal.quantile(point[1])))
                      .at(shelf_K, pressure_Pa),
                  pressure_Pa)
              .peakRate();
    }
    return sum;
  }

  private static double at(Range range, int step) {
    return range.low() + (range.high() - range.low()) * step / (SIDE - 1);
  }
}
