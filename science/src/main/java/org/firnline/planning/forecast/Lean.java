package org.firnline.planning.forecast;

/**
 * The direction in which the differences between vessels lead to the most extreme one: to first
 * order, where a normal deviate of the result comes from (law of propagation of uncertainty, JCGM
 * 100:2008, 5.1).
 *
 * @param heat change of ln K_v per standard deviation of the result
 * @param resistance change of ln R_0 and ln A_1 per standard deviation
 * @param fill relative change of the fill per standard deviation
 */
record Lean(double heat, double resistance, double fill) {

  /** A vessel like its neighbors. */
  static final Lean NONE = new Lean(0, 0, 0);

  /** A vessel is filled with something. */
  private static final double LEAST_FILL = 0.05;

  /**
   * From the changes of the result by one standard deviation of each input.
   *
   * @param heatSpread standard deviation of ln K_v
   * @param resistanceSpread of ln R_0 and ln A_1
   * @param fillSpread relative, of the fill
   */
  static Lean of(
      double byHeat,
      double byResistance,
      double byFill,
      double heatSpread,
      double resistanceSpread,
      double fillSpread) {
    double whole = Math.sqrt(byHeat * byHeat + byResistance * byResistance + byFill * byFill);
    if (!(whole > 0) || Double.isInfinite(whole)) {
      return NONE;
    }
    return new Lean(
        heatSpread * byHeat / whole,
        resistanceSpread * byResistance / whole,
        fillSpread * byFill / whole);
  }

  double heatFactor(double deviate) {
    return Math.exp(heat * deviate);
  }

  double resistanceFactor(double deviate) {
    return Math.exp(resistance * deviate);
  }

  double fillFactor(double deviate) {
    return Math.max(LEAST_FILL, 1 + fill * deviate);
  }
}
