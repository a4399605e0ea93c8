package org.firnline.app.planfile;

import java.util.ArrayList;
import java.util.List;
import org.firnline.units.QuantityKind;

/** Every key a plan file may hold, once: the readers, the schema and the manual follow it. */
public final class PlanKeys {
  /** The keys that describe one item of a load. */
  static final List<String> ITEM =
      List.of("product", "vessel", "count", "edge_share", "owner", "hazards");

  static final String ALSO = "also";

  private static final List<PlanKey> ALL = all();

  private PlanKeys() {}

  /** Every key, in the order in which people write them. */
  public static List<PlanKey> list() {
    return ALL;
  }

  /** Names of the keys directly in a section; the empty path is the whole file. */
  static List<String> in(String section) {
    return directlyIn(section).stream().map(PlanKey::name).toList();
  }

  static List<PlanKey> directlyIn(String section) {
    return ALL.stream().filter(key -> key.section().equals(section)).toList();
  }

  private static List<PlanKey> all() {
    List<PlanKey> keys = new ArrayList<>();
    text(keys, "plan");
    product(keys);
    vessel(keys);
    add(keys, PlanKey.Type.COUNT, "count");
    quantity(keys, QuantityKind.FRACTION, "edge_share");
    text(keys, "owner");
    hazards(keys);
    add(keys, PlanKey.Type.ITEMS, ALSO);
    dryer(keys);
    quantity(keys, QuantityKind.TEMPERATURE, "room");
    add(keys, PlanKey.Type.SECTION, "recipe");
    quantity(keys, QuantityKind.TEMPERATURE, "recipe.shelf");
    quantity(keys, QuantityKind.PRESSURE, "recipe.pressure");
    wishes(keys);
    add(keys, PlanKey.Type.TIME, "start");
    return List.copyOf(keys);
  }

  private static void product(List<PlanKey> keys) {
    add(keys, PlanKey.Type.SECTION, "product", "product.resistance", "product.densities");
    text(keys, "product.name");
    quantity(keys, QuantityKind.FRACTION, "product.solids", "product.resistance.spread");
    quantity(keys, QuantityKind.DENSITY, "product.solution_density");
    quantity(keys, QuantityKind.NUMBER, "product.unfrozen_water");
    quantity(keys, QuantityKind.CONDUCTIVITY, "product.frozen_conductivity");
    estimate(keys, QuantityKind.TEMPERATURE, "product.critical_temperature");
    choice(keys, "product.critical_kind", "collapse", "glass_transition", "eutectic");
    quantity(keys, QuantityKind.CAKE_RESISTANCE, "product.resistance.r0");
    quantity(keys, QuantityKind.CAKE_RESISTANCE_PER_DEPTH, "product.resistance.a1");
    quantity(keys, QuantityKind.PER_LENGTH, "product.resistance.a2");
    quantity(
        keys,
        QuantityKind.DENSITY,
        "product.densities.ice",
        "product.densities.solids",
        "product.densities.unfrozen");
  }

  private static void vessel(List<PlanKey> keys) {
    add(keys, PlanKey.Type.SECTION, "vessel", "vessel.heat_transfer", "vessel.above");
    choice(keys, "vessel.kind", "vial", "flask", "tray", "piece");
    text(keys, "vessel.type");
    quantity(keys, QuantityKind.VOLUME, "vessel.fill", "vessel.brimful", "vessel.volume");
    choice(keys, "vessel.frozen", "shell", "puddle");
    quantity(
        keys,
        QuantityKind.LENGTH,
        "vessel.outer_diameter",
        "vessel.wall",
        "vessel.height",
        "vessel.wall_radius",
        "vessel.length",
        "vessel.width",
        "vessel.thickness");
    quantity(keys, QuantityKind.AREA, "vessel.area", "vessel.face_area");
    quantity(
        keys,
        QuantityKind.CONDUCTIVITY,
        "vessel.glass_conductivity",
        "vessel.above.cake_conductivity");
    estimate(keys, QuantityKind.HEAT_TRANSFER, "vessel.room_heat_transfer");
    estimate(keys, QuantityKind.HEAT_TRANSFER, "vessel.above.heat_transfer");
    estimate(keys, QuantityKind.MOUTH_RESISTANCE, "vessel.port_resistance");
    quantity(keys, QuantityKind.HEAT_TRANSFER, "vessel.heat_transfer.a");
    quantity(keys, QuantityKind.HEAT_TRANSFER_PER_PRESSURE, "vessel.heat_transfer.b");
    quantity(keys, QuantityKind.PER_PRESSURE, "vessel.heat_transfer.c");
    quantity(keys, QuantityKind.FRACTION, "vessel.heat_transfer.spread");
  }

  private static void hazards(List<PlanKey> keys) {
    add(keys, PlanKey.Type.SECTION, "hazards");
    text(keys, "hazards.solvent");
    text(keys, "hazards.acid");
    text(keys, "hazards.energetic");
    add(keys, PlanKey.Type.FLAG, "hazards.azide", "hazards.toxic", "hazards.food");
    add(keys, PlanKey.Type.COUNT, "hazards.biological");
  }

  private static void dryer(List<PlanKey> keys) {
    add(
        keys,
        PlanKey.Type.SECTION,
        "dryer",
        "dryer.shelves",
        "dryer.edge",
        "dryer.collector",
        "dryer.capability",
        "dryer.chamber",
        "dryer.gauges");
    text(keys, "dryer.name");
    add(keys, PlanKey.Type.RANGE, QuantityKind.TEMPERATURE, "dryer.shelf_range");
    add(keys, PlanKey.Type.RANGE, QuantityKind.PRESSURE, "dryer.pressure_range");
    quantity(keys, QuantityKind.TEMPERATURE_RATE, "dryer.ramp");
    add(keys, PlanKey.Type.COUNT, "dryer.steps", "dryer.shelves.count");
    quantity(
        keys,
        QuantityKind.LENGTH,
        "dryer.shelves.width",
        "dryer.shelves.depth",
        "dryer.shelves.clearance",
        "dryer.capability.duct_diameter");
    estimate(keys, QuantityKind.NUMBER, "dryer.edge.ratio");
    quantity(keys, QuantityKind.PRESSURE, "dryer.edge.at", "dryer.capability.threshold");
    estimate(keys, QuantityKind.HEAT_TRANSFER, "dryer.edge.side");
    quantity(
        keys,
        QuantityKind.TEMPERATURE,
        "dryer.edge.wall",
        "dryer.collector.temperature",
        "dryer.capability.vapor_temperature");
    quantity(keys, QuantityKind.MASS, "dryer.collector.capacity");
    quantity(keys, QuantityKind.MASS_FLOW, "dryer.collector.rate");
    quantity(keys, QuantityKind.NUMBER, "dryer.capability.discharge");
    quantity(keys, QuantityKind.MASS_FLOW_PER_PRESSURE, "dryer.capability.slope");
    quantity(keys, QuantityKind.VOLUME, "dryer.chamber.volume");
    quantity(keys, QuantityKind.VOLUME_FLOW, "dryer.chamber.pumping_speed");
    text(keys, "dryer.gauges.capacitance");
    text(keys, "dryer.gauges.thermal_conductivity");
    estimate(keys, QuantityKind.NUMBER, "dryer.gauges.vapor_excess");
  }

  private static void wishes(List<PlanKey> keys) {
    add(keys, PlanKey.Type.SECTION, "wishes", "wishes.annealing", "wishes.secondary");
    quantity(keys, QuantityKind.FRACTION, "wishes.risk");
    add(keys, PlanKey.Type.COUNT, "wishes.steps");
    quantity(
        keys,
        QuantityKind.TEMPERATURE,
        "wishes.annealing.temperature",
        "wishes.secondary.temperature",
        "wishes.secondary.dry_glass_transition");
    quantity(keys, QuantityKind.TIME, "wishes.annealing.hold");
    quantity(
        keys,
        QuantityKind.FRACTION,
        "wishes.secondary.target",
        "wishes.secondary.wettest",
        "wishes.secondary.equilibrium");
    quantity(keys, QuantityKind.PER_TIME, "wishes.secondary.rate");
    quantity(keys, QuantityKind.MOLAR_ENERGY, "wishes.secondary.activation");
    quantity(keys, QuantityKind.NUMBER, "wishes.secondary.glass_constant");
    quantity(keys, QuantityKind.TEMPERATURE_DIFFERENCE, "wishes.secondary.margin");
  }

  private static void text(List<PlanKey> keys, String path) {
    add(keys, PlanKey.Type.TEXT, path);
  }

  private static void choice(List<PlanKey> keys, String path, String... choices) {
    keys.add(new PlanKey(path, PlanKey.Type.CHOICE, QuantityKind.NUMBER, List.of(choices)));
  }

  private static void quantity(List<PlanKey> keys, QuantityKind kind, String... paths) {
    add(keys, PlanKey.Type.QUANTITY, kind, paths);
  }

  private static void estimate(List<PlanKey> keys, QuantityKind kind, String path) {
    add(keys, PlanKey.Type.ESTIMATE, kind, path);
  }

  private static void add(List<PlanKey> keys, PlanKey.Type type, String... paths) {
    add(keys, type, QuantityKind.NUMBER, paths);
  }

  private static void add(
      List<PlanKey> keys, PlanKey.Type type, QuantityKind kind, String... paths) {
    for (String path : paths) {
      keys.add(new PlanKey(path, type, kind, List.of()));
    }
  }
}
