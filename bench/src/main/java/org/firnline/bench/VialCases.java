package org.firnline.bench;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;

/**
 * Invented vials at invented settings, different enough that no processor can learn one by heart:
 * eight shelf temperatures from -35 to 0 °C by eight pressures from 4 to 18 Pa, all of which dry.
 */
public final class VialCases {
  private static final Solution FIVE_PERCENT =
      new Solution(1020, 0.05, 0, new PhaseDensities(917, 1590, 1000), 2.3);
  private static final CakeResistance CAKE = new CakeResistance(5e4, 5e7, 500);
  private static final HeatTransfer HEAT = Iso8362Vial.TYPICAL_HEAT_TRANSFER;
  private static final double INNER_AREA_M2 = 3.8e-4;
  private static final double OUTER_AREA_M2 = 4.5e-4;
  private static final double COLDEST_SHELF_K = 238;
  private static final int SIDE = 8;

  private VialCases() {}

  /**
   * One vial and its settings.
   *
   * @param vessel the vial as primary drying sees it
   * @param shelf_K shelf temperature
   * @param pressure_Pa chamber pressure
   */
  public record VialCaseInput(DryingVessel vessel, double shelf_K, double pressure_Pa) {

    /** Heat from the shelf. */
    public HeatSupply supply() {
      return HeatSupply.fromShelf(HEAT, shelf_K, pressure_Pa);
    }
  }

  /** All sixty-four, always the same. */
  public static List<VialCaseInput> all() {
    List<VialCaseInput> cases = new ArrayList<>();
    for (int warmth = 0; warmth < SIDE; warmth++) {
      for (int step = 0; step < SIDE; step++) {
        double fill_m3 = (2 + 0.03 * (warmth * SIDE + step)) * 1e-6;
        Slab slab = Slab.of(FIVE_PERCENT, fill_m3, INNER_AREA_M2, OUTER_AREA_M2);
        DryingVessel vessel = new DryingVessel(slab, CAKE, 0);
        cases.add(new VialCaseInput(vessel, COLDEST_SHELF_K + 5 * warmth, 4 + 2 * step));
      }
    }
    return List.copyOf(cases);
  }
}
