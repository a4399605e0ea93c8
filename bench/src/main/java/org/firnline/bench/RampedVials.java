package org.firnline.bench;

import java.util.List;
import java.util.stream.IntStream;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.Solution;
import org.firnline.lab.Vial;

/** Invented vials that store heat and follow a shelf ramp, no two alike; all of them dry. */
final class RampedVials {
  private RampedVials() {}

  /** Sixteen: shelves from −28 to −13 °C, fills and cakes that differ. */
  static List<MarchInTime.Vial> all() {
    return IntStream.range(0, 16).mapToObj(RampedVials::vial).toList();
  }

  private static MarchInTime.Vial vial(int number) {
    Vial vial = Iso8362Vial.R10.nominal();
    double fill = 3e-6 * (0.8 + 0.02 * number);
    Slab slab = Slab.of(Solution.typical(1020, 0.05), fill, vial.innerArea(), vial.outerArea());
    CakeResistance cake = new CakeResistance(5e4, 5e7, 100).times(1.3 - 0.03 * number);
    return new MarchInTime.Vial(
        new DryingVessel(slab, cake, 0),
        vial.heatTransfer(),
        new ThermalMass(4, 6),
        228,
        245 + number,
        0.5 / 60,
        6 + 0.5 * number);
  }
}
