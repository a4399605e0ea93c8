package org.firnline.planning.forecast;

import java.util.List;
import java.util.stream.IntStream;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.lab.LoadItem;
import org.firnline.numerics.SobolPoints;

/**
 * Tries programs of settings on a load: 128 runs drawn from what is not known about it, in each the
 * typical, the last and the warmest vessel of every item and place.
 *
 * <p>Quasi-steady primary drying on a shared chamber pressure (docs/science.md). Heat transfer is
 * taken as known or unknown for all items together; resistance and critical temperature for each.
 * The last and the warmest of N vessels are drawn from the distribution of the greatest of N, along
 * the direction that leads there to first order. Sobol points of fixed seed: the same bits on any
 * number of threads.
 */
public final class LoadForecaster {

  /** A power of two fills the cube most evenly. */
  public static final int RUNS = 128;

  private static final long SEED = 40_417;

  private final Sharing sharing;
  private final List<LoadItem> items;
  private final VaporPath path;
  private final List<SampledVessels> samples;
  private final SampledVessels middle;

  public LoadForecaster(Sharing sharing) {
    this(sharing, RUNS);
  }

  /**
   * With another number of runs.
   *
   * @param runs 1 or more; a power of two is best
   */
  public LoadForecaster(Sharing sharing, int runs) {
    this.sharing = sharing;
    Places places = new Places(sharing);
    this.items = places.items();
    this.path = VaporPath.of(sharing.dryer().capability(), sharing.dryer().collector());
    List<Place> all = places.all();
    int dimensions = RunDraw.dimensions(items.size());
    this.samples =
        SobolPoints.of(runs, dimensions, SEED).stream()
            .map(point -> SampledVessels.of(all, items, RunDraw.at(point, items.size())))
            .toList();
    this.middle = SampledVessels.of(all, items, RunDraw.middle(items.size()));
  }

  /** What the program does in every drawn run. */
  public SampledLoad run(DryingProgram program) {
    List<SampledTruth> truths =
        IntStream.range(0, samples.size())
            .parallel()
            .mapToObj(run -> new LoadPath(samples.get(run), path).follow(program))
            .toList();
    return new SampledLoad(truths, sharing.load().portions());
  }

  /** What the program does where everything is as is most plausible. */
  public SampledTruth middle(DryingProgram program) {
    return new LoadPath(middle, path).follow(program);
  }

  /** Greatest relative doubt about the heat that the items get. */
  public double heatSpread() {
    return items.stream()
        .map(item -> SampledVessels.heatTransfer(item.vessel()))
        .mapToDouble(factor -> factor.spread() / factor.best())
        .max()
        .orElse(0);
  }

  /** Greatest doubt about a critical temperature, K. */
  public double criticalSpread() {
    return items.stream()
        .mapToDouble(item -> item.product().critical().temperature().spread())
        .max()
        .orElse(0);
  }

  /** The load and the machine. */
  public Sharing sharing() {
    return sharing;
  }

  SampledVessels middleVessels() {
    return middle;
  }

  VaporPath path() {
    return path;
  }
}
