package org.firnline.drying.cycle;

import java.util.Optional;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.ThermalMass;

/**
 * One vessel through a whole cycle, or a number of equal ones.
 *
 * @param count how many; positive
 * @param slab its frozen product
 * @param vessel the same product with cake and mouth
 * @param heat what warms it
 * @param mass heat that glass and frozen product store
 * @param freezing how it freezes; empty if it comes frozen through, at shelf temperature
 * @param desorption how its cake dries further
 */
public record CycleVessel(
    double count,
    Slab slab,
    DryingVessel vessel,
    ShelfHeat heat,
    ThermalMass mass,
    Optional<Freezing> freezing,
    Desorption desorption) {

  /** Melting point of a dilute solution, K, a degree below water. */
  static final double DILUTE_FREEZING_POINT = 272.15;

  /**
   * How a vessel freezes.
   *
   * @param nucleation temperature at which ice first forms, K; below {@code freezingPoint}
   * @param freezingPoint K
   * @param liquidHeatCapacity of the liquid, J/K; positive
   */
  public record Freezing(double nucleation, double freezingPoint, double liquidHeatCapacity) {

    public Freezing {
      if (!(nucleation <= freezingPoint)) {
        throw new IllegalArgumentException(
            "nucleation at " + nucleation + " K above the freezing point " + freezingPoint + " K");
      }
      if (!(liquidHeatCapacity > 0)) {
        throw new IllegalArgumentException(
            "liquid heat capacity " + liquidHeatCapacity + " J/K is not positive");
      }
    }
  }

  /**
   * First-order loss of the water that the cake still holds: dC/dt = −k_0 exp(−E_a/RT)(C − C_eq).
   *
   * @param rateConstant k_0, 1/s; 0 or more
   * @param activation E_a, J/mol; 0 or more
   * @param equilibrium C_eq, kg of water per kg of solids; 0 or more
   * @param start C when the last ice is gone; not below {@code equilibrium}
   * @param solids kg; 0 or more
   */
  public record Desorption(
      double rateConstant, double activation, double equilibrium, double start, double solids) {

    /** Nothing left to lose. */
    public static final Desorption NONE = new Desorption(0, 0, 0, 0, 0);

    public Desorption {
      if (!(rateConstant >= 0) || !(activation >= 0) || !(solids >= 0)) {
        throw new IllegalArgumentException("a desorption input is negative");
      }
      if (!(start >= equilibrium && equilibrium >= 0)) {
        throw new IllegalArgumentException(
            "moisture " + start + " at the start is below its equilibrium " + equilibrium);
      }
    }
  }

  public CycleVessel {
    if (!(count > 0)) {
      throw new IllegalArgumentException("count " + count + " is not positive");
    }
  }
}
