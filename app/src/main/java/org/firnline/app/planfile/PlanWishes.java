package org.firnline.app.planfile;

import java.util.Optional;

/**
 * What a person wants of a recipe.
 *
 * @param risk accepted probability that the warmest vessel exceeds its critical temperature
 * @param steps steps of primary drying that the dryer's programmer takes
 * @param annealing how the frozen product is warmed before drying; empty where it is not
 * @param secondary what secondary drying has to achieve; empty for the rule of thumb
 */
public record PlanWishes(
    double risk, int steps, Optional<AnnealingWish> annealing, Optional<MoistureWish> secondary) {

  /**
   * Annealing.
   *
   * @param shelf_K of the shelf
   * @param hold_s how long
   */
  public record AnnealingWish(double shelf_K, double hold_s) {}

  /**
   * A moisture to reach, and what is known of the cake.
   *
   * @param target kg water per kg of dry solids
   * @param shelf_K shelf temperature of the hold
   * @param wettest moisture when the ice is gone, kg/kg
   * @param equilibrium moisture that stays, kg/kg
   * @param rate_per_s of desorption at 25 °C
   * @param activation_J_per_mol of desorption
   * @param dryGlass_K glass transition of the dry solid
   * @param glassConstant of the fall of the glass transition by water
   * @param margin_K wanted distance below the glass transition
   */
  public record MoistureWish(
      double target,
      double shelf_K,
      double wettest,
      double equilibrium,
      double rate_per_s,
      double activation_J_per_mol,
      double dryGlass_K,
      double glassConstant,
      double margin_K) {}
}
