package org.firnline.review;

import org.firnline.review.signal.Signal;

/** How much the gauge ratio falls during a rise of the pressure. */
final class RatioFall {
  /** A rise that never comes back is judged by this long a beginning. */
  private static final double ONSET_S = 7200;

  private RatioFall() {}

  /**
   * Share of (level before - 1) that is lost, 0 if it holds or if noise could do it; the edges are
   * left out because a heat-loss gauge lags behind. A rise that outlasts primary drying is judged
   * by its beginning: later the ratio falls because the ice is gone, in every run.
   */
  static double during(Facts facts, GaugeRatio.Ratio ratio, PressureRise rise) {
    Signal raw = ratio.raw();
    int hour = facts.grid().steps(3600);
    double before = raw.medianIn(Math.max(ratio.from(), rise.start() - hour), rise.start());
    boolean outlasts = rise.end() >= facts.timeline().secondary();
    if (outlasts && Double.isNaN(before)) {
      return 0; // neither a level before nor one after to compare with
    }
    int onset = rise.start() + facts.grid().steps(ONSET_S);
    int last = outlasts ? Math.min(rise.end(), onset) : rise.end();
    int edge = (last - rise.start()) / 10;
    double inside = raw.medianIn(rise.start() + edge, last + 1 - edge);
    double reference = Double.isNaN(before) ? ratio.plateau() : before;
    double fall = (reference - inside) / (reference - 1);
    double points = Math.min(Math.max(1, last - rise.start()), 60.0);
    double noise = 4 * raw.noise() / (reference - 1) / Math.sqrt(points);
    return Double.isNaN(fall) || reference < 1.05 || fall < noise ? 0 : fall;
  }
}
