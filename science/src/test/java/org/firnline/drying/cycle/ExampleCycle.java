package org.firnline.drying.cycle;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.secondary.Desorption;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;

/** An invented load of 10R vials with 3 mL of a 5 % disaccharide on an invented dryer. */
final class ExampleCycle {

  static final Slab SLAB =
      new Slab(0.0029055750000000005, 0.008589174483798324, 3.801e-4, 4.524e-4, 2.3);
  static final CakeResistance CAKE = new CakeResistance(4.8e4, 4.8e7, 0);
  static final HeatTransfer TUBING = new HeatTransfer(10, 1.04, 0.0231);
  static final ThermalMass MASS = new ThermalMass(4, 6);

  private ExampleCycle() {}

  static CycleVessel vial(double count, double heatFactor, double cakeFactor, double nucleation) {
    return CycleVessel.of(
            count,
            new DryingVessel(SLAB, CAKE.times(cakeFactor), 0),
            ShelfHeat.of(TUBING.times(heatFactor)),
            MASS)
        .freezing(new CycleVessel.Freezing(nucleation, CycleVessel.DILUTE_FREEZING_POINT, 12.2))
        .holding(BoundWater.of(new Desorption(670.179127262, 40_000, 0.003), 0.2, 1.53e-4));
  }

  static CycleDryer dryer(double slope) {
    var path = new VaporPath(List.of(new MeasuredLine(slope, 0)), 0);
    return new CycleDryer(
        path, 0.12, 0.004, 1e-3, 1.0 / 60, 203.15, CycleDryer.Surroundings.USUAL, 0.6, 1333);
  }

  static Recipe recipe(double primary_h) {
    double ramp = 0.5 / 60;
    return new Recipe(
        "invented",
        293.15,
        List.of(
            step(RecipePhase.FREEZING, 228.15, ramp, OptionalDouble.empty(), 2),
            step(RecipePhase.EVACUATION, 228.15, ramp, OptionalDouble.of(10), 0.25),
            step(RecipePhase.PRIMARY_DRYING, 253.15, ramp, OptionalDouble.of(10), primary_h),
            step(RecipePhase.SECONDARY_DRYING, 298.15, 0.2 / 60, OptionalDouble.of(10), 5),
            step(RecipePhase.BACKFILL, 298.15, ramp, OptionalDouble.empty(), 0.25)));
  }

  private static RecipeStep step(
      RecipePhase phase, double target, double ramp, OptionalDouble pressure, double hold_h) {
    return new RecipeStep(phase, target, ramp, pressure, hold_h * 3600);
  }

  /** Vials that all differ a little. */
  static List<CycleVessel> load(int vials) {
    return IntStream.range(0, vials)
        .mapToObj(
            i ->
                vial(
                    1,
                    0.9 + 0.4 * i / vials,
                    1.25 - 0.5 * ((i * 7) % vials) / vials,
                    264 - 8.0 * ((i * 3) % vials) / vials))
        .toList();
  }
}
