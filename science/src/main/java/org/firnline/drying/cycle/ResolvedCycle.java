package org.firnline.drying.cycle;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.freezing.FreezingVessel;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.vessel.LoadedVessel;
import org.firnline.drying.vessel.Surroundings;
import org.firnline.lab.Dryer;
import org.firnline.lab.Gauge;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Portion;
import org.firnline.lab.Shelves;

/**
 * From the nouns of the lab to what a cycle simulates: every kind of vessel on every kind of dryer,
 * at the best values known.
 */
public final class ResolvedCycle {

  /** Any area and coefficient do where only heat capacities are asked for. */
  private static final double UNIT = 1;

  /** A dryer without shelves never follows a shelf; any ramp will do, K/s. */
  private static final double NO_SHELVES = 1;

  /** Full scale of a usual capacitance gauge, Pa (common practice, 10 Torr). */
  private static final double USUAL_GAUGE_LIMIT = 1_333;

  private ResolvedCycle() {}

  /**
   * The vessels of {@code load}, frozen through and without bound water; pieces as their halves.
   *
   * @param glassHeat heat capacity of the share of each vessel that follows its product, J/K; 0 or
   *     more
   */
  public static List<CycleVessel> vessels(Load load, Surroundings around, double glassHeat) {
    return load.portions().stream()
        .map(Portion::item)
        .map(item -> vessel(item, around, glassHeat))
        .toList();
  }

  /** The vessels of one item. */
  public static CycleVessel vessel(LoadItem item, Surroundings around, double glassHeat) {
    LoadedVessel loaded = LoadedVessel.of(item, around);
    FreezingVessel heat =
        FreezingVessel.of(
            item.product().solution(),
            item.fill(),
            UNIT,
            UNIT,
            0,
            CycleVessel.DILUTE_FREEZING_POINT);
    int parts = loaded.parts();
    return CycleVessel.of(
            (double) parts * item.count(),
            loaded.vessel(),
            loaded.heat(),
            new ThermalMass(glassHeat / parts, heat.frozenHeat() / parts))
        .limitedTo(item.product().critical().temperature().best());
  }

  /** The same vessel filled as a liquid, in which ice appears at {@code nucleation_K}. */
  public static CycleVessel liquid(
      LoadItem item, Surroundings around, double glassHeat, double nucleation_K) {
    CycleVessel frozen = vessel(item, around, glassHeat);
    double liquid =
        FreezingVessel.of(
                item.product().solution(),
                item.fill(),
                UNIT,
                UNIT,
                0,
                CycleVessel.DILUTE_FREEZING_POINT)
            .liquidHeat();
    double each = liquid * item.count() / frozen.count();
    return frozen.freezing(
        new CycleVessel.Freezing(nucleation_K, CycleVessel.DILUTE_FREEZING_POINT, each));
  }

  /**
   * The machine; empty where nobody knows its chamber's volume or its pump.
   *
   * @param leak air that always comes in, Pa m3/s
   */
  public static Optional<CycleDryer> dryer(
      Dryer dryer, CycleDryer.Surroundings around, double leak) {
    OptionalDouble volume = dryer.chamber().volume();
    OptionalDouble pump = dryer.chamber().pumpingSpeed();
    if (volume.isEmpty() || pump.isEmpty()) {
      return Optional.empty();
    }
    var machine =
        new CycleDryer(
            VaporPath.of(dryer.capability(), dryer.collector()),
            volume.getAsDouble(),
            pump.getAsDouble(),
            leak,
            dryer.shelves().map(Shelves::ramp).orElse(NO_SHELVES),
            dryer.collector().temperature(),
            around,
            dryer.gauges().stream().mapToDouble(Gauge::excess).max().orElse(0),
            USUAL_GAUGE_LIMIT);
    CycleDryer holding = machine.holding(dryer.collector().capacity());
    return Optional.of(dryer.pressureControl().isPresent() ? holding : holding.floating());
  }
}
