package org.firnline.app.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The questions of the plan page, in the order people answer them. */
final class PlanQuestions {
  /**
   * A question.
   *
   * @param path its key in the plan file
   * @param unit the unit meant when only a number is typed; empty for words and counts
   * @param width how much room the answer needs: {@code short}, {@code long} or {@code wide}
   */
  record Question(String path, String unit, String width) {}

  /** A titled group of questions; the title is a bundle key. */
  record Group(String key, List<Question> questions) {}

  /** The few that everybody answers. */
  static final List<Group> FEW =
      List.of(
          new Group(
              "product",
              List.of(
                  text("product.name"),
                  number("product.solids", "%"),
                  number("product.critical_temperature", "°C"))),
          new Group(
              "load",
              List.of(
                  text("vessel.kind"),
                  text("vessel.type"),
                  number("vessel.fill", "mL"),
                  number("count", ""))),
          new Group("dryer", List.of(text("dryer.name"), new Question("start", "", "wide"))),
          new Group(
              "recipe", List.of(number("recipe.shelf", "°C"), number("recipe.pressure", "Pa"))));

  /** The rest, behind "more". */
  static final List<Group> MORE =
      List.of(
          new Group(
              "cake",
              List.of(
                  number("product.resistance.r0", "m/s"),
                  number("product.resistance.a1", "1/s"),
                  number("product.resistance.a2", "1/m"),
                  number("product.resistance.spread", "%"),
                  text("product.critical_kind"),
                  number("product.solution_density", "g/mL"),
                  number("product.frozen_conductivity", "W/m/K"),
                  number("product.densities.ice", "kg/m3"),
                  number("product.densities.solids", "kg/m3"),
                  number("product.densities.unfrozen", "kg/m3"),
                  number("product.unfrozen_water", ""))),
          new Group(
              "heat",
              List.of(
                  number("vessel.heat_transfer.a", "W/m2/K"),
                  number("vessel.heat_transfer.b", "W/m2/K/Pa"),
                  number("vessel.heat_transfer.c", "1/Pa"),
                  number("vessel.heat_transfer.spread", "%"),
                  number("edge_share", "%"))),
          new Group(
              "flask",
              List.of(
                  number("vessel.volume", "mL"),
                  text("vessel.frozen"),
                  number("vessel.wall_radius", "mm"),
                  number("vessel.area", "cm2"),
                  number("vessel.glass_conductivity", "W/m/K"),
                  number("vessel.room_heat_transfer", "W/m2/K"),
                  number("vessel.port_resistance", "Pa.s/kg"),
                  number("room", "°C"))),
          new Group(
              "tray",
              List.of(
                  number("vessel.length", "mm"),
                  number("vessel.width", "mm"),
                  number("vessel.height", "mm"),
                  number("vessel.thickness", "mm"),
                  number("vessel.face_area", "cm2"),
                  number("vessel.above.heat_transfer", "W/m2/K"),
                  number("vessel.above.cake_conductivity", "W/m/K"))),
          new Group(
              "own-vial",
              List.of(
                  number("vessel.outer_diameter", "mm"),
                  number("vessel.wall", "mm"),
                  number("vessel.brimful", "mL"))),
          new Group(
              "hazards",
              List.of(
                  text("owner"),
                  text("hazards.solvent"),
                  text("hazards.acid"),
                  text("hazards.energetic"),
                  text("hazards.biological"),
                  text("hazards.azide"),
                  text("hazards.toxic"),
                  text("hazards.food"))),
          new Group("items", List.of(new Question("also", "", "wide"))),
          new Group(
              "wishes",
              List.of(
                  number("wishes.risk", "%"),
                  number("wishes.steps", ""),
                  number("wishes.annealing.temperature", "°C"),
                  number("wishes.annealing.hold", "h"),
                  number("wishes.secondary.target", "%"),
                  number("wishes.secondary.temperature", "°C"),
                  number("wishes.secondary.wettest", "%"),
                  number("wishes.secondary.equilibrium", "%"),
                  number("wishes.secondary.rate", "1/s"),
                  number("wishes.secondary.activation", "kJ/mol"),
                  number("wishes.secondary.dry_glass_transition", "°C"),
                  number("wishes.secondary.glass_constant", ""),
                  number("wishes.secondary.margin", "K"))),
          new Group(
              "machine",
              List.of(
                  number("dryer.steps", ""),
                  text("dryer.shelf_range"),
                  text("dryer.pressure_range"),
                  number("dryer.ramp", "K/min"),
                  number("dryer.collector.capacity", "kg"),
                  number("dryer.collector.rate", "kg/d"),
                  number("dryer.collector.temperature", "°C"),
                  number("dryer.capability.duct_diameter", "mm"),
                  number("dryer.capability.discharge", ""),
                  number("dryer.capability.vapor_temperature", "°C"),
                  number("dryer.capability.slope", "kg/h/Pa"),
                  number("dryer.capability.threshold", "Pa"),
                  number("dryer.shelves.count", ""),
                  number("dryer.shelves.width", "mm"),
                  number("dryer.shelves.depth", "mm"),
                  number("dryer.shelves.clearance", "mm"),
                  number("dryer.edge.ratio", ""),
                  number("dryer.edge.at", "Pa"),
                  number("dryer.edge.side", "W/m2/K"),
                  number("dryer.edge.wall", "°C"),
                  number("dryer.chamber.volume", "L"),
                  number("dryer.chamber.pumping_speed", "m3/h"),
                  text("dryer.gauges.capacitance"),
                  text("dryer.gauges.thermal_conductivity"),
                  number("dryer.gauges.vapor_excess", ""))));

  /** What the page starts with: an example everybody can change. */
  static final Map<String, String> EXAMPLE =
      Map.of("vessel.type", "10R", "vessel.fill", "3 mL", "count", "120");

  private PlanQuestions() {}

  static Stream<Question> all() {
    return Stream.concat(FEW.stream(), MORE.stream()).flatMap(group -> group.questions().stream());
  }

  static Optional<Question> find(String path) {
    return all().filter(question -> question.path().equals(path)).findFirst();
  }

  private static Question text(String path) {
    return new Question(path, "", "long");
  }

  private static Question number(String path, String unit) {
    return new Question(path, unit, "short");
  }
}
