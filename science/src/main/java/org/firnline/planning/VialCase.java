package org.firnline.planning;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.primary.VialTrajectory;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Vial;

/**
 * One vial of a load, somewhat different from the typical one.
 *
 * @param item the load it belongs to
 * @param heatFactor its K_v over the typical one
 * @param resistanceFactor its R_0 and A_1 over the typical ones
 * @param fillFactor its fill over the nominal one
 */
record VialCase(LoadItem item, double heatFactor, double resistanceFactor, double fillFactor) {

  /** The typical vial inside the load, at the best values known. */
  static VialCase typical(LoadItem item) {
    return new VialCase(
        item, item.vial().heatTransferFactor().best(), item.product().resistanceFactor().best(), 1);
  }

  VialCase warmedBy(double factor) {
    return new VialCase(item, heatFactor * factor, resistanceFactor, fillFactor);
  }

  VialCase hinderedBy(double factor) {
    return new VialCase(item, heatFactor, resistanceFactor * factor, fillFactor);
  }

  VialCase filledBy(double factor) {
    return new VialCase(item, heatFactor, resistanceFactor, fillFactor * factor);
  }

  DryingVessel vessel() {
    Vial vial = item.vial();
    Slab slab =
        Slab.of(
            item.product().solution(),
            item.fill() * fillFactor,
            vial.innerArea(),
            vial.outerArea());
    return new DryingVessel(slab, item.product().resistance().times(resistanceFactor), 0);
  }

  /** Its way through primary drying at {@code hold}. */
  VialTrajectory trajectory(Hold hold) {
    return FastPrimaryDrying.run(vessel(), supply(hold), hold.pressure_Pa());
  }

  /** Vapor rate of its first ice, kg/s. */
  double rateAtStart(Hold hold) {
    return new QuasiSteadyFront().at(vessel(), supply(hold), hold.pressure_Pa(), 0).rate();
  }

  HeatSupply supply(Hold hold) {
    return HeatSupply.fromShelf(
        item.vial().heatTransfer().times(heatFactor), hold.shelf_K(), hold.pressure_Pa());
  }
}
