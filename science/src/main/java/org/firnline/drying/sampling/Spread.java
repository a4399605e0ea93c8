package org.firnline.drying.sampling;

/**
 * How far something varies.
 *
 * @param heatTransfer standard deviation of ln K_v; 0 or more
 * @param resistance standard deviation of the logarithm of R_0 and A_1, which move together; 0 or
 *     more
 * @param fill relative standard deviation of the fill; 0 or more, well below 1
 */
public record Spread(double heatTransfer, double resistance, double fill) {

  /** No spread at all. */
  public static final Spread NONE = new Spread(0, 0, 0);

  public Spread {
    if (!(heatTransfer >= 0) || !(resistance >= 0) || !(fill >= 0 && fill < 0.3)) {
      throw new IllegalArgumentException(
          "spreads "
              + heatTransfer
              + ", "
              + resistance
              + ", "
              + fill
              + ": none may be negative, that of the fill must stay below 0.3");
    }
  }
}
