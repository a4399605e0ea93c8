package org.firnline.learning.run;

import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Vial;

/**
 * What is believed before the run.
 *
 * @param transfer shape of K_v(P); the fit finds a factor on it
 * @param heatTransfer factor on {@code transfer}
 * @param initial R_0, m/s
 * @param growth A_1, 1/s
 * @param leveling A_2, 1/m
 * @param offset of the thermometer, K
 */
public record RunPriors(
    HeatTransfer transfer,
    Prior heatTransfer,
    Prior initial,
    Prior growth,
    Prior leveling,
    Prior offset) {

  /** Offset of an ordinary thermometer in a vessel, K; common practice, no published source. */
  private static final double THERMOMETER_K = 0.5;

  /**
   * The plan's spread is of R_0 and A_1 together; each alone is less known. Common practice, no
   * published source.
   */
  private static final double EACH_ALONE = 2;

  /** The beliefs a plan holds. A constant that the plan puts at zero is held there. */
  public static RunPriors of(LoadItem item) {
    Vial vial = item.vial();
    CakeResistance cake = item.product().resistance();
    double factor = item.product().resistanceFactor().best();
    double spread = EACH_ALONE * item.product().resistanceFactor().spread() / factor;
    double heat = vial.heatTransferFactor().best();
    return new RunPriors(
        vial.heatTransfer(),
        new Prior(heat, vial.heatTransferFactor().spread() / heat),
        loose(cake.initial() * factor, spread),
        loose(cake.growth() * factor, spread),
        loose(cake.leveling(), spread),
        new Prior(0, THERMOMETER_K));
  }

  private static Prior loose(double best, double spread) {
    return best > 0 ? new Prior(best, spread) : Prior.held(best);
  }

  Prior of(Parameter parameter) {
    return switch (parameter) {
      case HEAT_TRANSFER -> heatTransfer;
      case INITIAL_RESISTANCE -> initial;
      case RESISTANCE_GROWTH -> growth;
      case RESISTANCE_LEVELING -> leveling;
      case THERMOMETER_OFFSET -> offset;
    };
  }
}
