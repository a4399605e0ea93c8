package org.firnline.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.firnline.planning.design.DesignWishes;
import org.firnline.planning.design.RecipeDesign;
import org.firnline.planning.design.RecipeDesigner;
import org.firnline.planning.forecast.DryingProgram;
import org.firnline.planning.forecast.LoadForecaster;
import org.firnline.planning.forecast.SampledLoad;
import org.firnline.planning.forecast.Sharing;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The recipe of a load of a thousand vials, with everything that stands beside it. */
@Question(
    asks = "How many recipes for a load of 1 000 vials can be designed?",
    counts = "recipes",
    baseline =
        "patience: every plain hold of a grid of 12 pressures and 40 shelf temperatures, forecast"
            + " by the same 128 runs",
    trap =
        "The baseline finds one hold; the design finds steps, hold, ideal and rule of thumb and puts"
            + " the whole recipe around them. A thousand vials are followed as typical, last and"
            + " warmest at each place, so their number costs nothing. Both sides use all cores."
            + " Wanted is one a second on two idle cores.")
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 2)
public class DesignedRecipe {
  private static final int PRESSURES = 12;
  private static final int SHELVES = 40;
  private static final double COLDEST_K = 233;

  private final Sharing sharing = PlanningLoads.thousandVials();

  @Benchmark
  public RecipeDesign firnline() {
    return new RecipeDesigner(sharing, DesignWishes.USUAL).design();
  }

  @Benchmark
  public double baseline() {
    LoadForecaster forecaster = new LoadForecaster(sharing);
    double fastest = Double.POSITIVE_INFINITY;
    for (int pressure = 0; pressure < PRESSURES; pressure++) {
      for (int shelf = 0; shelf < SHELVES; shelf++) {
        fastest = Math.min(fastest, time(forecaster, COLDEST_K + shelf / 2.0, 4 + 2.0 * pressure));
      }
    }
    return fastest;
  }

  private static double time(LoadForecaster forecaster, double shelf_K, double pressure_Pa) {
    SampledLoad tried =
        forecaster.run(
            new DryingProgram(
                COLDEST_K,
                1.0 / 60,
                List.of(
                    new DryingProgram.Leg(
                        shelf_K, OptionalDouble.of(pressure_Pa), Double.POSITIVE_INFINITY))));
    return tried.overheatingRisk() > DesignWishes.USUAL.risk()
        ? Double.POSITIVE_INFINITY
        : tried.lastTime();
  }
}
