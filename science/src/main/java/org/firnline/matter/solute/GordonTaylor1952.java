package org.firnline.matter.solute;

/**
 * Glass transition of a solid with some water: T_g = (w_s T_gs + k w_w T_gw)/(w_s + k w_w), with
 * mass fractions w and temperatures in kelvin.
 *
 * <p>Assumes a uniform amorphous mixture; crystals do not count as solid here.
 *
 * <p>Valid: mass fraction of water 0 to about 0.3, where k is fitted.
 *
 * <p>Source: Gordon &amp; Taylor, J. Appl. Chem. 2, 493 (1952) (from memory; form as printed by
 * Berk, Food Process Engineering and Technology, equation 1.13). Accuracy: published T_g of dry
 * sugars differ by 10 K and more, which the result inherits.
 *
 * @param dryTransition T_gs of the dry solid, K; positive
 * @param constant k; positive
 * @param waterTransition T_gw of amorphous water, K; positive, published 135 to 138
 */
public record GordonTaylor1952(double dryTransition, double constant, double waterTransition) {

  /** Glass transition of water that most fits of k use, K: −135 °C. */
  public static final double WATER_TRANSITION = 138.15;

  public GordonTaylor1952 {
    if (!(dryTransition > 0 && constant > 0 && waterTransition > 0)) {
      throw new IllegalArgumentException(
          "glass transitions "
              + dryTransition
              + " K and "
              + waterTransition
              + " K and the constant "
              + constant
              + " must be positive");
    }
  }

  /** With the usual glass transition of water. */
  public GordonTaylor1952(double dryTransition, double constant) {
    this(dryTransition, constant, WATER_TRANSITION);
  }

  /**
   * T_g in K at a water content.
   *
   * @param waterFraction mass of water per mass of moist solid, 0 to 1
   */
  public double at(double waterFraction) {
    if (!(waterFraction >= 0 && waterFraction <= 1)) {
      throw new IllegalArgumentException(
          "water fraction " + waterFraction + " is no share between 0 and 1");
    }
    double solids = 1 - waterFraction;
    double water = constant * waterFraction;
    return (solids * dryTransition + water * waterTransition) / (solids + water);
  }

  /**
   * T_g in K at a moisture.
   *
   * @param moisture mass of water per mass of dry solids, kg/kg; 0 or more
   */
  public double atMoisture(double moisture) {
    return at(moisture / (1 + moisture));
  }

  /**
   * The moisture at which T_g falls to {@code temperature_K}, kg water per kg dry solids: the most
   * the solid may hold there.
   *
   * @param temperature_K above {@link #waterTransition()} and up to {@link #dryTransition()}
   */
  public double moistureAt(double temperature_K) {
    if (!(temperature_K > waterTransition && temperature_K <= dryTransition)) {
      throw new IllegalArgumentException(
          "no moisture brings the glass transition to " + temperature_K + " K");
    }
    return (dryTransition - temperature_K) / (constant * (temperature_K - waterTransition));
  }
}
