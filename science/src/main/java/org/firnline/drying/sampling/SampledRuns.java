package org.firnline.drying.sampling;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.firnline.evidence.Band;
import org.firnline.numerics.Quantile;

/**
 * Many sampled runs of one load.
 *
 * @param runs at least one
 */
public record SampledRuns(List<SampledRun> runs) {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  public SampledRuns {
    runs = List.copyOf(runs);
    if (runs.isEmpty()) {
      throw new IllegalArgumentException("no sampled runs");
    }
  }

  /** Median of {@code figure} over the runs with the limits that hold nine times in ten. */
  public Band band(ToDoubleFunction<SampledRun> figure) {
    var quantile = quantile(figure);
    return new Band(quantile.at(LOW), quantile.at(1.0 / 2), quantile.at(HIGH));
  }

  /** Quantiles of {@code figure} over the runs. */
  public Quantile quantile(ToDoubleFunction<SampledRun> figure) {
    return new Quantile(runs.stream().mapToDouble(figure).toArray());
  }

  /** Share of runs in which some vessel gets warmer than {@code limit_K} or melts. */
  public double probabilityWarmestOver(double limit_K) {
    double over = runs.stream().filter(run -> run.warmest() > limit_K).count();
    return over / runs.size();
  }
}
