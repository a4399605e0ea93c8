package org.firnline.planning.forecast;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.firnline.evidence.Band;
import org.firnline.lab.Portion;
import org.firnline.numerics.Quantile;

/**
 * A program tried on many possible truths.
 *
 * @param truths at least one
 * @param portions of the load, in its order
 */
public record SampledLoad(List<SampledTruth> truths, List<Portion> portions) {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  public SampledLoad {
    truths = List.copyOf(truths);
    portions = List.copyOf(portions);
  }

  /** The summary that people read. */
  public LoadOutlook outlook() {
    return new LoadOutlook(
        band(SampledTruth::typicalOfAll),
        band(SampledTruth::lastOfAll),
        band(SampledTruth::warmestOfAll),
        overheatingRisk(),
        pressureRisk(),
        band(SampledTruth::peakRate),
        band(
            truth ->
                Double.isNaN(truth.peakPressure())
                    ? Double.POSITIVE_INFINITY
                    : truth.peakPressure()),
        IntStream.range(0, portions.size()).mapToObj(this::item).toList(),
        truths.size());
  }

  /** Share of the truths in which some vessel exceeds its critical temperature. */
  public double overheatingRisk() {
    return share(truth -> truth.excess() > 0);
  }

  /** Share of the truths in which the chamber pressure rises above its setting. */
  public double pressureRisk() {
    return share(truth -> !truth.holdsPressure());
  }

  /** Middle of the finish of the last vessel, s. */
  public double lastTime() {
    return quantile(SampledTruth::lastOfAll).at(1.0 / 2);
  }

  /** How far above its critical temperature the load is in {@code leg} at this quantile, K. */
  public double legExcess(int leg, double quantile) {
    return quantile(truth -> truth.legExcess().get(leg)).at(quantile);
  }

  /** How far above its critical temperature the load is at this quantile, K. */
  public double excess(double quantile) {
    return quantile(SampledTruth::excess).at(quantile);
  }

  /** Vapor rate over what the dryer carries in {@code leg} at this quantile. */
  public double legLoad(int leg, double quantile) {
    return quantile(truth -> truth.legLoad().get(leg)).at(quantile);
  }

  private ItemForecast item(int item) {
    Portion portion = portions.get(item);
    return new ItemForecast(
        portion.item().product().name(),
        portion.owner(),
        band(truth -> truth.typical().get(item)),
        band(truth -> truth.last().get(item)),
        band(truth -> truth.warmest().get(item)),
        share(truth -> truth.warmest().get(item) > truth.limits().get(item)));
  }

  private double share(java.util.function.Predicate<SampledTruth> condition) {
    return truths.stream().filter(condition).count() / (double) truths.size();
  }

  private Band band(ToDoubleFunction<SampledTruth> figure) {
    Quantile quantile = quantile(figure);
    return new Band(quantile.at(LOW), quantile.at(1.0 / 2), quantile.at(HIGH));
  }

  private Quantile quantile(ToDoubleFunction<SampledTruth> figure) {
    return new Quantile(truths.stream().mapToDouble(figure).toArray());
  }
}
