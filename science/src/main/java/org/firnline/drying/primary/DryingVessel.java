package org.firnline.drying.primary;

import org.firnline.lab.CakeResistance;
import org.firnline.lab.LoadItem;

/**
 * One vessel as primary drying sees it.
 *
 * @param geometry shape of its frozen product
 * @param cake resistance of its cake
 * @param mouthResistance stopper, neck or port in series with the cake, Pa s/kg; 0 or more
 */
public record DryingVessel(FrontGeometry geometry, CakeResistance cake, double mouthResistance) {

  public DryingVessel {
    if (!(mouthResistance >= 0)) {
      throw new IllegalArgumentException("mouth resistance " + mouthResistance + " is negative");
    }
  }

  /** A typical vessel of {@code item}, without mouth resistance. */
  public static DryingVessel typical(LoadItem item) {
    Slab slab =
        Slab.of(
            item.product().solution(),
            item.fill(),
            item.vial().innerArea(),
            item.vial().outerArea());
    return new DryingVessel(slab, item.product().resistance(), 0);
  }

  /** Resistance between the front at {@code depth_m} and the chamber, Pa s/kg. */
  public double vaporResistance(double depth_m) {
    return geometry.cakeResistance(cake, depth_m) + mouthResistance;
  }

  /** This vessel with another fill and another cake, both as factors on the typical ones. */
  public DryingVessel varied(double fillFactor, double resistanceFactor) {
    return new DryingVessel(
        geometry.filledBy(fillFactor), cake.times(resistanceFactor), mouthResistance);
  }
}
