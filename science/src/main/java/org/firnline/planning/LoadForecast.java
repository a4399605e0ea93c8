package org.firnline.planning;

import java.util.EnumMap;
import java.util.Map;
import org.firnline.drying.primary.VialTrajectory;
import org.firnline.evidence.Band;
import org.firnline.evidence.Estimate;
import org.firnline.lab.LoadItem;
import org.firnline.matter.Water;
import org.firnline.numerics.Normal;

/**
 * First-order forecast of a load at one hold: a few trajectories around the typical vial and the
 * vial at an edge, doubt about the load and spread across it kept apart.
 *
 * <p>Source: law of propagation of uncertainty, JCGM 100:2008, 5.1. The last and the warmest of N
 * vessels are taken at the quantile 1 − 1/(2N).
 */
final class LoadForecast {

  /** Nine chances in ten lie within this many standard deviations. */
  private static final double NINE_IN_TEN = Normal.quantile(0.95);

  private final LoadItem item;
  private final VesselVariation variation;

  LoadForecast(LoadItem item, VesselVariation variation) {
    this.item = item;
    this.variation = variation;
  }

  /** Typical vial, the rest of the load standing away from edges. */
  VialCase typical() {
    return VialCase.typical(item);
  }

  /** The typical vial at the warmest kind of place that the load occupies. */
  VialCase warmestPlace() {
    return item.edgeShare() > 0 ? typical().warmedBy(variation.edgeFactor()) : typical();
  }

  /** Drying time of {@code vial}, s; infinite unless it dries. */
  double time(VialCase vial, Hold hold) {
    VialTrajectory trajectory = vial.trajectory(hold);
    return trajectory.dries() ? trajectory.time() : Double.POSITIVE_INFINITY;
  }

  /** Warmest frozen point of {@code vial}, K; the triple point where it melts. */
  private static double warmest(VialCase vial, Hold hold) {
    double warmest = vial.trajectory(hold).warmest();
    return Double.isNaN(warmest) ? Water.TRIPLE_POINT_TEMPERATURE : warmest;
  }

  /** Greatest rate of {@code vial}, kg/s; where it melts, the rate at which it begins. */
  private static double peakRate(VialCase vial, Hold hold) {
    double peak = vial.trajectory(hold).peakRate();
    if (!Double.isNaN(peak)) {
      return peak;
    }
    return hold.belowTriplePoint() ? vial.rateAtStart(hold) : 0;
  }

  /** Drying time of a typical vial, s, with the doubt about the load. */
  Band typicalTime(Hold hold) {
    return times(hold, runSpreads(), 0);
  }

  /** Drying time of the last vial, s, with the doubt about the load. */
  Band lastTime(Hold hold) {
    int inside = Math.max(1, (int) Math.round(item.count() * (1 - item.edgeShare())));
    Sensitivity acrossVessels = logTime(hold, vesselSpreads());
    return times(hold, runSpreads(), lastOf(inside) * acrossVessels.rise());
  }

  /** Greatest temperature of the warmest vial, K. */
  WarmestPoint warmest(Hold hold) {
    int there =
        Math.max(1, (int) Math.round(item.count() * (item.edgeShare() > 0 ? item.edgeShare() : 1)));
    VialCase place = warmestPlace();
    Sensitivity acrossVessels = Sensitivity.of(vial -> warmest(vial, hold), place, vesselSpreads());
    Sensitivity aboutRun = Sensitivity.of(vial -> warmest(vial, hold), place, runSpreads());
    double best = aboutRun.best() + lastOf(there) * acrossVessels.rise();
    return new WarmestPoint(
        best, aboutRun.rise(), aboutRun.fall(), item.product().critical().temperature());
  }

  /** Greatest vapor rate of the whole load, kg/s. */
  Band peakRate(Hold hold) {
    Sensitivity inside = Sensitivity.of(vial -> peakRate(vial, hold), typical(), runSpreads());
    Sensitivity edge = Sensitivity.of(vial -> peakRate(vial, hold), warmestPlace(), runSpreads());
    double share = item.edgeShare();
    double best = item.count() * ((1 - share) * inside.best() + share * edge.best());
    double rise = item.count() * ((1 - share) * inside.rise() + share * edge.rise());
    double fall = item.count() * ((1 - share) * inside.fall() + share * edge.fall());
    return new Band(Math.max(0, best - NINE_IN_TEN * fall), best, best + NINE_IN_TEN * rise);
  }

  /** Share of the variance of the last finish that each unknown causes. */
  Map<Unknown, Double> shareOfDoubt(Hold hold) {
    Map<Unknown, Double> shares = new EnumMap<>(Unknown.class);
    Sensitivity time = logTime(hold, runSpreads());
    if (!Double.isFinite(time.best()) || !Double.isFinite(time.rise()) || time.rise() == 0) {
      return shares;
    }
    double variance = time.rise() * time.rise();
    shares.put(Unknown.HEAT_TRANSFER, squared(time.heat().rise()) / variance);
    shares.put(Unknown.CAKE_RESISTANCE, squared(time.resistance().rise()) / variance);
    return shares;
  }

  Sensitivity.Spreads runSpreads() {
    return new Sensitivity.Spreads(
        relative(item.vial().heatTransferFactor()), relative(item.product().resistanceFactor()), 0);
  }

  private Sensitivity.Spreads vesselSpreads() {
    return new Sensitivity.Spreads(
        variation.heatTransfer(), variation.resistance(), variation.fill());
  }

  private Band times(Hold hold, Sensitivity.Spreads spreads, double logShift) {
    Sensitivity logTime = logTime(hold, spreads);
    double best = Math.exp(logTime.best() + logShift);
    if (!Double.isFinite(best)) {
      return new Band(best, best, best);
    }
    return new Band(
        best * Math.exp(-NINE_IN_TEN * logTime.fall()),
        best,
        best * Math.exp(NINE_IN_TEN * logTime.rise()));
  }

  private Sensitivity logTime(Hold hold, Sensitivity.Spreads spreads) {
    return Sensitivity.of(vial -> Math.log(time(vial, hold)), typical(), spreads);
  }

  /** Standard deviations between the middle and the last of {@code count} vessels. */
  private static double lastOf(int count) {
    return Normal.quantile(1 - 1 / (2.0 * count));
  }

  private static double relative(Estimate factor) {
    return factor.spread() / factor.best();
  }

  private static double squared(double value) {
    return value * value;
  }

  /**
   * The warmest frozen point of the load against its limit.
   *
   * @param best K
   * @param rise standard deviation towards warmer, K
   * @param fall standard deviation towards colder, K
   * @param limit critical temperature, K
   */
  record WarmestPoint(double best, double rise, double fall, Estimate limit) {

    Band band() {
      return new Band(best - NINE_IN_TEN * fall, best, best + NINE_IN_TEN * rise);
    }

    /** Standard deviation of the distance between point and limit, K. */
    double doubt() {
      return Math.hypot(rise, limit.spread());
    }

    /** Probability that the point lies above its limit. */
    double risk() {
      double doubt = doubt();
      if (doubt == 0) {
        return best > limit.best() ? 1 : 0;
      }
      return Normal.probabilityBelow((best - limit.best()) / doubt);
    }

    /** How far the point lies above the limit at {@code deviations} of doubt, K. */
    double excess(double deviations) {
      return best + deviations * doubt() - limit.best();
    }
  }
}
