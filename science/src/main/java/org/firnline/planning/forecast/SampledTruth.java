package org.firnline.planning.forecast;

import java.util.Collections;
import java.util.List;

/**
 * What one possible truth leads to.
 *
 * @param last finish of the last vessel of each item, s; infinite where it never dries or melts
 * @param typical finish of the typical vessel of each item, s
 * @param warmest greatest temperature of any frozen point of each item, K; that of melting ice
 *     where it melts
 * @param limits critical temperature of each item, K
 * @param legExcess for each leg, how far the worst item passes its critical temperature, K;
 *     negative below it
 * @param legLoad for each leg, greatest vapor rate over what the dryer carries at its setting
 * @param peakRate greatest vapor rate of the whole load, kg/s
 * @param peakPressure greatest chamber pressure, Pa; NaN where the dryer carries the load nowhere
 */
public record SampledTruth(
    List<Double> last,
    List<Double> typical,
    List<Double> warmest,
    List<Double> limits,
    List<Double> legExcess,
    List<Double> legLoad,
    double peakRate,
    double peakPressure) {

  public SampledTruth {
    last = List.copyOf(last);
    typical = List.copyOf(typical);
    warmest = List.copyOf(warmest);
    limits = List.copyOf(limits);
    legExcess = List.copyOf(legExcess);
    legLoad = List.copyOf(legLoad);
  }

  double lastOfAll() {
    return Collections.max(last);
  }

  double typicalOfAll() {
    return Collections.max(typical);
  }

  /** How far the worst item passes its critical temperature, K. */
  double excess() {
    double worst = Double.NEGATIVE_INFINITY;
    for (int item = 0; item < warmest.size(); item++) {
      worst = Math.max(worst, warmest.get(item) - limits.get(item));
    }
    return worst;
  }

  double warmestOfAll() {
    return Collections.max(warmest);
  }

  boolean holdsPressure() {
    return Collections.max(legLoad) <= 1;
  }
}
