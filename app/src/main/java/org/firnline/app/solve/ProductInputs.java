package org.firnline.app.solve;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.RoomHeat;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Shell;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.firnline.matter.Water;

/** Builds the nouns that several kinds of case share from their inputs. */
final class ProductInputs {

  /** Borosilicate glass, W/(m K) (from memory); used where a case names a thickness only. */
  private static final double GLASS_CONDUCTIVITY = 1.1;

  /** Stands for an infinite conductivity, W/(m K): no layer of it warms by a billionth of a K. */
  private static final double PERFECT_CONDUCTOR = 1e15;

  private ProductInputs() {}

  static Solution solution(CaseInputs inputs) {
    PhaseDensities phases =
        new PhaseDensities(
            inputs.number("rho_ice", Water.ICE_DENSITY),
            inputs.number("rho_solid", PhaseDensities.TYPICAL.solids()),
            inputs.number("rho_water", Water.LIQUID_DENSITY));
    return new Solution(
        inputs.number("rho_solution"),
        inputs.number("solids", 0),
        inputs.number("unfrozen", 0),
        phases,
        Math.min(
            PERFECT_CONDUCTOR, inputs.number("k_frozen", Solution.TYPICAL_FROZEN_CONDUCTIVITY)));
  }

  static boolean isShell(CaseInputs inputs) {
    return inputs.has("wall_radius");
  }

  static FrontGeometry geometry(CaseInputs inputs) {
    return isShell(inputs) ? shell(inputs) : slab(inputs);
  }

  static Slab slab(CaseInputs inputs) {
    return Slab.of(
        solution(inputs),
        inputs.number("fill"),
        inputs.number("area_product"),
        inputs.number("area_vessel", inputs.number("area_product")));
  }

  static Shell shell(CaseInputs inputs) {
    Shell.Glass glass =
        new Shell.Glass(inputs.number("glass", 0), inputs.number("k_glass", GLASS_CONDUCTIVITY));
    return Shell.of(
        solution(inputs),
        inputs.number("fill"),
        inputs.number("wall_radius"),
        inputs.number("height"),
        glass);
  }

  static CakeResistance cake(CaseInputs inputs) {
    return new CakeResistance(
        inputs.number("rp_r0", 0), inputs.number("rp_a1", 0), inputs.number("rp_a2", 0));
  }

  static HeatTransfer heatTransfer(CaseInputs inputs) {
    return new HeatTransfer(
        inputs.number("kv_a", 0), inputs.number("kv_b", 0), inputs.number("kv_c", 0));
  }

  static DryingVessel vessel(CaseInputs inputs) {
    return new DryingVessel(geometry(inputs), cake(inputs), inputs.number("mouth", 0));
  }

  /** What warms a vessel, whatever shelf and pressure will be. */
  static HeatSource heat(CaseInputs inputs) {
    if (isShell(inputs)) {
      return new RoomHeat(inputs.number("h_room"), inputs.number("room"));
    }
    ShelfHeat.Wall wall =
        inputs.has("k_side")
            ? new ShelfHeat.Wall(inputs.number("k_side"), inputs.number("t_wall"))
            : ShelfHeat.Wall.NONE;
    return new ShelfHeat(heatTransfer(inputs), wall, above(inputs));
  }

  private static ShelfHeat.Above above(CaseInputs inputs) {
    return inputs.has("h_top")
        ? new ShelfHeat.Above.Fixed(
            new HeatSupply.Above(
                inputs.number("h_top"), inputs.number("k_cake"), inputs.number("t_top")))
        : ShelfHeat.Above.NONE;
  }

  /** The heat sources of a vessel at constant settings. */
  static HeatSupply supply(CaseInputs inputs, double pressure_Pa) {
    double shelf = isShell(inputs) ? inputs.number("room") : inputs.number("shelf");
    return heat(inputs).at(shelf, pressure_Pa);
  }
}
