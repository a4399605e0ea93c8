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
              List.of(text("vessel.type"), number("vessel.fill", "mL"), number("count", ""))),
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
                  number("product.solution_density", "g/mL"),
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
              "machine",
              List.of(
                  text("dryer.shelf_range"),
                  text("dryer.pressure_range"),
                  number("dryer.ramp", "K/min"),
                  number("dryer.collector.capacity", "kg"),
                  number("dryer.collector.rate", "kg/d"),
                  number("dryer.collector.temperature", "°C"),
                  number("dryer.capability.duct_diameter", "mm"),
                  number("dryer.capability.discharge", ""))));

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
