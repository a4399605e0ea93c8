package org.firnline.planning.forecast;

/**
 * How much smaller than stated the doubts about a load are taken: what a measurement would leave.
 *
 * @param heat factor on the doubt about the heat transfer; 0 to 1
 * @param resistance factor on the doubt about the cake resistance
 * @param critical factor on the doubt about the critical temperature
 */
public record Narrowing(double heat, double resistance, double critical) {

  /** As stated. */
  public static final Narrowing NONE = new Narrowing(1, 1, 1);

  public Narrowing {
    if (!(heat >= 0) || !(resistance >= 0) || !(critical >= 0)) {
      throw new IllegalArgumentException("a doubt cannot be narrowed to less than nothing");
    }
  }
}
