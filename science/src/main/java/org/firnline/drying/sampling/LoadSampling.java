package org.firnline.drying.sampling;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.VialTrajectory;
import org.firnline.numerics.Normal;
import org.firnline.numerics.Quantile;
import org.firnline.numerics.SeededUniform;
import org.firnline.numerics.SobolPoints;

/**
 * A load at constant settings, run many times with what is uncertain drawn anew: once for all
 * vessels of a run, and once for each vessel.
 *
 * <p>Runs are spread evenly (Sobol points); vessels inside a run are drawn at random, because the
 * first, last and warmest of N even points would not be those of N independent vessels. The same
 * seed gives the same answer to the last bit, on any number of threads.
 *
 * <p>Assumes the dryer holds the pressure, so that vessels do not feel each other; factors on K_v
 * and on R_0 and A_1 independent of each other.
 *
 * @param variation how much
 * @param runs how many; a power of two is best
 * @param seed of all that is drawn
 */
public record LoadSampling(Variation variation, int runs, long seed) {

  /** Dimensions of what is unknown about a run: heat transfer, resistance, fill. */
  private static final int RUN_DIMENSIONS = 3;

  private static final int HEAT = 0;
  private static final int RESISTANCE = 1;
  private static final int FILL = 2;

  /** A vessel is filled with something. */
  private static final double LEAST_FILL = 0.05;

  private static final double NEARLY_ALL = 0.95;

  public LoadSampling {
    if (runs < 1) {
      throw new IllegalArgumentException(runs + " runs: at least one is needed");
    }
  }

  /** Samples on all processors. */
  public SampledRuns run(DryingLoad load, double shelf_K, double pressure_Pa) {
    return run(load, shelf_K, pressure_Pa, IntStream.range(0, runs).parallel());
  }

  /** Samples the runs of these numbers. */
  SampledRuns run(DryingLoad load, double shelf_K, double pressure_Pa, IntStream numbers) {
    List<double[]> points = SobolPoints.of(runs, RUN_DIMENSIONS, seed);
    var random = new SeededUniform(seed);
    return new SampledRuns(
        numbers
            .mapToObj(number -> one(load, shelf_K, pressure_Pa, number, points.get(number), random))
            .toList());
  }

  private SampledRun one(
      DryingLoad load,
      double shelf_K,
      double pressure_Pa,
      int number,
      double[] point,
      SeededUniform random) {
    Spread spread = variation.betweenRuns();
    double heat = Math.exp(spread.heatTransfer() * Normal.quantile(point[HEAT]));
    double resistance = Math.exp(spread.resistance() * Normal.quantile(point[RESISTANCE]));
    double fill = 1 + spread.fill() * Normal.quantile(point[FILL]);
    int count = load.groups().stream().mapToInt(LoadSampling::whole).sum();
    double[] finishes = new double[count];
    double warmest = 0;
    double peakRate = 0;
    int vessel = 0;
    for (VesselGroup group : load.groups()) {
      for (int member = 0; member < whole(group); member++) {
        Draw draw = draw(random, number, vessel).times(heat, resistance, fill);
        VialTrajectory path = draw.follow(group, shelf_K, pressure_Pa);
        boolean melts = Double.isNaN(path.time());
        finishes[vessel] = melts ? Double.POSITIVE_INFINITY : path.time();
        warmest = Math.max(warmest, melts ? Double.POSITIVE_INFINITY : path.warmest());
        peakRate += path.peakRate();
        vessel++;
      }
    }
    return summary(finishes, warmest, peakRate);
  }

  private static int whole(VesselGroup group) {
    return (int) Math.round(group.count());
  }

  private static SampledRun summary(double[] finishes, double warmest, double peakRate) {
    var quantile = new Quantile(finishes);
    return new SampledRun(
        quantile.at(0),
        quantile.at(1.0 / 2),
        quantile.at(NEARLY_ALL),
        Arrays.stream(finishes).max().orElseThrow(),
        warmest,
        peakRate);
  }

  private Draw draw(SeededUniform random, int run, int vessel) {
    Spread spread = variation.betweenVessels();
    return new Draw(
        Math.exp(spread.heatTransfer() * random.normalAt(run, vessel, HEAT)),
        Math.exp(spread.resistance() * random.normalAt(run, vessel, RESISTANCE)),
        1 + spread.fill() * random.normalAt(run, vessel, FILL));
  }

  /** Factors of one vessel on the typical one. */
  private record Draw(double heat, double resistance, double fill) {

    Draw times(double runHeat, double runResistance, double runFill) {
      return new Draw(heat * runHeat, resistance * runResistance, fill * runFill);
    }

    VialTrajectory follow(VesselGroup group, double shelf_K, double pressure_Pa) {
      return FastPrimaryDrying.run(
          group.vessel().varied(Math.max(fill, LEAST_FILL), resistance),
          group.heat().times(heat).at(shelf_K, pressure_Pa),
          pressure_Pa);
    }
  }
}
