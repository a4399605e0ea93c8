package org.firnline.planning.ask;

import org.firnline.drying.cycle.WarmUp;
import org.firnline.evidence.Band;
import org.firnline.evidence.Estimate;
import org.firnline.numerics.Normal;

/**
 * How long frozen product stays below its critical temperature when power or vacuum fails.
 *
 * <p>One temperature for ice and glass, no sublimation, which would cool: the answer is on the
 * short, cautious side. As ice goes the store of cold shrinks, so the ice still left counts.
 *
 * <p>Source: Newton's law of cooling; heat capacity of ice 1950 J/(kg K) at −20 °C, IAPWS R10-06
 * (2009).
 *
 * @param ice left in the vessel, kg; positive
 * @param area through which heat arrives, m2; positive
 * @param heatTransfer from the surroundings, W/(m2 K); best positive
 * @param start product temperature when it fails, K; that of ice
 * @param critical temperature it must stay below, K; that of ice
 * @param surroundings temperature of the room, K; positive
 */
public record WarmUpTime(
    double ice,
    double area,
    Estimate heatTransfer,
    double start,
    double critical,
    double surroundings) {

  /** Ice at −20 °C, J/(kg K). Source: IAPWS R10-06. */
  private static final double ICE_HEAT = 1_950;

  private static final double NINE_IN_TEN = Normal.quantile(0.95);

  public WarmUpTime {
    Given.positive(ice, "ice", "kg");
    Given.positive(area, "area", "m2");
    Given.positive(heatTransfer.best(), "heat transfer", "W/(m2 K)");
    Given.ice(start, "product temperature");
    Given.ice(critical, "critical temperature");
    Given.positive(surroundings, "room temperature", "K");
  }

  /** Time constant at the best values, s. */
  public double timeConstant_s() {
    return warming(heatTransfer.best()).timeConstant();
  }

  /** Product temperature after {@code time_s} at the best values, K, while it stays frozen. */
  public double temperature_K(double time_s) {
    return warming(heatTransfer.best()).temperature(start, time_s);
  }

  /**
   * Time until the critical temperature, s, with the doubt about the heat transfer; 0 if it is
   * reached already, infinite if the room never warms it that far.
   */
  public Band time_s() {
    double spread = heatTransfer.spread() / heatTransfer.best();
    double more = heatTransfer.best() * Math.exp(NINE_IN_TEN * spread);
    double less = heatTransfer.best() * Math.exp(-NINE_IN_TEN * spread);
    return new Band(time(more), time(heatTransfer.best()), time(less));
  }

  private double time(double coefficient) {
    return warming(coefficient).timeTo(start, critical);
  }

  private WarmUp warming(double coefficient) {
    return new WarmUp(ice * ICE_HEAT, coefficient * area, surroundings);
  }
}
