package org.firnline.review;

import org.firnline.review.signal.Signal;

/** How much the gauge ratio falls during a rise of the pressure. */
final class RatioFall {
  private RatioFall() {}

  /**
   * Share of (level before - 1) that is lost, 0 if it holds or if noise could do it; the edges are
   * left out because a heat-loss gauge lags behind.
   */
  static double during(Facts facts, GaugeRatio.Ratio ratio, PressureRise rise) {
    Signal raw = ratio.raw();
    int hour = facts.grid().steps(3600);
    double before = raw.medianIn(Math.max(ratio.from(), rise.start() - hour), rise.start());
    int edge = (rise.end() - rise.start()) / 10;
    double inside = raw.medianIn(rise.start() + edge, rise.end() + 1 - edge);
    double reference = Double.isNaN(before) ? ratio.plateau() : before;
    double fall = (reference - inside) / (reference - 1);
    double points = Math.min(Math.max(1, rise.end() - rise.start()), 60.0);
    double noise = 4 * raw.noise() / (reference - 1) / Math.sqrt(points);
    return Double.isNaN(fall) || reference < 1.05 || fall < noise ? 0 : fall;
  }
}
