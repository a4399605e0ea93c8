package org.firnline.drying.cycle;

import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.recipe.ThermalMass;

/**
 * One vessel through a whole cycle, or a number of equal ones: a vial, tray, puddle or half of a
 * piece (a slab), or a flask frozen on its wall (a shell).
 *
 * @param count how many; positive
 * @param vessel shape of its frozen product, cake and mouth
 * @param heat what warms it: a shelf, with wall and shelf above, or the room
 * @param mass heat that glass and frozen product store
 * @param freezing how it freezes; empty if it comes frozen through
 * @param water what its cake holds when the ice is gone
 * @param annealing what warm frozen hours do to it; empty where nothing
 * @param critical temperature its ice should stay below, K; empty where nobody knows
 * @param stay when it is on the dryer
 */
public record CycleVessel(
    double count,
    DryingVessel vessel,
    HeatSource heat,
    ThermalMass mass,
    Optional<Freezing> freezing,
    BoundWater water,
    Optional<Annealing> annealing,
    OptionalDouble critical,
    Stay stay) {

  /** Melting point of a dilute solution, K, a degree below water. */
  public static final double DILUTE_FREEZING_POINT = 272.15;

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
   * When a vessel is on the dryer, as flasks on a manifold come and go. What opening a port does to
   * the chamber is an {@link Incident} of its own.
   *
   * @param from when it is put on, s; 0 or more
   * @param until when it is taken off, s; after {@code from}, may be infinite
   * @param temperature at which it is put on, K; empty where it has that of the shelf then
   */
  public record Stay(double from, double until, OptionalDouble temperature) {

    /** From the first moment to the last, at shelf temperature. */
    public static final Stay WHOLE_CYCLE =
        new Stay(0, Double.POSITIVE_INFINITY, OptionalDouble.empty());

    public Stay {
      if (!(from >= 0 && until > from)) {
        throw new IllegalArgumentException(
            "a vessel cannot stay from " + from + " s to " + until + " s");
      }
    }

    boolean covers(double time_s) {
      return time_s >= from && time_s < until;
    }
  }

  public CycleVessel {
    if (!(count > 0)) {
      throw new IllegalArgumentException("count " + count + " is not positive");
    }
  }

  /** A vessel that comes frozen and holds no water besides its ice. */
  public static CycleVessel of(
      double count, DryingVessel vessel, HeatSource heat, ThermalMass mass) {
    return new CycleVessel(
        count,
        vessel,
        heat,
        mass,
        Optional.empty(),
        BoundWater.NONE,
        Optional.empty(),
        OptionalDouble.empty(),
        Stay.WHOLE_CYCLE);
  }

  /** The same vessel {@code number} times. */
  public CycleVessel times(double number) {
    return new CycleVessel(number, vessel, heat, mass, freezing, water, annealing, critical, stay);
  }

  /** This vessel, filled as a liquid. */
  public CycleVessel freezing(Freezing how) {
    return new CycleVessel(
        count, vessel, heat, mass, Optional.of(how), water, annealing, critical, stay);
  }

  /** This vessel with water in its cake. */
  public CycleVessel holding(BoundWater bound) {
    return new CycleVessel(count, vessel, heat, mass, freezing, bound, annealing, critical, stay);
  }

  /** This vessel as one that annealing changes. */
  public CycleVessel annealedBy(Annealing change) {
    return new CycleVessel(
        count, vessel, heat, mass, freezing, water, Optional.of(change), critical, stay);
  }

  /** This vessel with a limit for its ice, K. */
  public CycleVessel limitedTo(double critical_K) {
    return new CycleVessel(
        count, vessel, heat, mass, freezing, water, annealing, OptionalDouble.of(critical_K), stay);
  }

  /** This vessel on the dryer for a part of the cycle. */
  public CycleVessel during(Stay part) {
    return new CycleVessel(count, vessel, heat, mass, freezing, water, annealing, critical, part);
  }
}
