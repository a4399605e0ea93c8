package org.firnline.app.planfile;

import java.util.Optional;
import org.firnline.drying.secondary.Desorption;
import org.firnline.drying.secondary.EquilibriumMoisture;
import org.firnline.drying.secondary.MoistSolid;
import org.firnline.lab.Load;
import org.firnline.matter.solute.GordonTaylor1952;
import org.firnline.planning.VesselVariation;
import org.firnline.planning.design.Annealing;
import org.firnline.planning.design.DesignWishes;
import org.firnline.planning.design.Proposal;
import org.firnline.planning.design.RecipeDesign;
import org.firnline.planning.design.RecipeDesigner;
import org.firnline.planning.design.SecondaryWish;
import org.firnline.planning.forecast.Sharing;

/**
 * A plan with its recipe, and what stands beside it.
 *
 * @param input the plan
 * @param design every proposal as simulated
 */
public record DesignedPlan(PlanInput input, RecipeDesign design) {
  /** Rates of desorption are given at this temperature. */
  private static final double RATE_AT_K = 298.15;

  /** Designs the recipe of a plan. */
  public static DesignedPlan of(PlanInput input) {
    return of(input, input.whole());
  }

  /** Designs a recipe for another load under the wishes of a plan. */
  static DesignedPlan of(PlanInput input, Load load) {
    Sharing sharing = new Sharing(load, input.dryer(), VesselVariation.USUAL, input.room_K());
    return new DesignedPlan(input, new RecipeDesigner(sharing, wishes(input.wishes())).design());
  }

  /** The proposal to follow: the designed one, or what the dryer does by itself. */
  public Proposal first() {
    return design.proposals().get(0);
  }

  /** Whether settings were found that keep the limits, or there are none to find. */
  public boolean isFound() {
    return first().kind() != Proposal.Kind.RULE_OF_THUMB
        && Double.isFinite(first().outlook().lastTime_s().best());
  }

  private static DesignWishes wishes(PlanWishes wishes) {
    Optional<Annealing> annealing =
        wishes.annealing().map(wish -> new Annealing(wish.shelf_K(), wish.hold_s()));
    return new DesignWishes(
        wishes.risk(), wishes.steps(), annealing, wishes.secondary().map(DesignedPlan::secondary));
  }

  private static SecondaryWish secondary(PlanWishes.MoistureWish wish) {
    Desorption desorption =
        Desorption.through(
            wish.rate_per_s(),
            RATE_AT_K,
            wish.activation_J_per_mol(),
            new EquilibriumMoisture.Constant(wish.equilibrium()));
    MoistSolid solid = new MoistSolid(wish.wettest(), desorption);
    return new SecondaryWish(
        wish.target(),
        wish.shelf_K(),
        solid,
        solid,
        new GordonTaylor1952(wish.dryGlass_K(), wish.glassConstant()),
        wish.margin_K());
  }
}
