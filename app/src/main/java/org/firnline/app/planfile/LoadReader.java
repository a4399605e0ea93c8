package org.firnline.app.planfile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.LoadItem;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Product;
import org.firnline.lab.Solution;
import org.firnline.lab.Vial;
import org.firnline.units.QuantityKind;

/** Reads what is dried, in what, and how many of them. */
final class LoadReader {
  private static final List<String> PRODUCT =
      List.of(
          "name",
          "solids",
          "solution_density",
          "unfrozen_water",
          "critical_temperature",
          "resistance");
  private static final List<String> RESISTANCE = List.of("r0", "a1", "a2", "spread");
  private static final List<String> VESSEL = List.of("type", "fill", "heat_transfer");
  private static final List<String> HEAT_TRANSFER = List.of("a", "b", "c", "spread");

  private final PlanSection top;
  private final PlanProblems problems;

  LoadReader(PlanSection top, PlanProblems problems) {
    this.top = top;
    this.problems = problems;
  }

  Optional<LoadItem> read() {
    PlanValues values = new PlanValues(top);
    PlanSection vessel = top.section("vessel", VESSEL);
    Optional<Product> product = product(top.section("product", PRODUCT));
    Optional<Vial> vial = vial(vessel);
    double fill = new PlanValues(vessel).number("fill", QuantityKind.VOLUME);
    int count = values.count("count");
    double edgeShare = values.number("edge_share", QuantityKind.FRACTION);
    if (!problems.none() || product.isEmpty() || vial.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new LoadItem(product.get(), vial.get(), fill, count, edgeShare));
    } catch (InvalidInputException e) {
      blameLoad(vessel, e);
      return Optional.empty();
    }
  }

  private void blameLoad(PlanSection vessel, InvalidInputException refusal) {
    for (Problem problem : refusal.problems()) {
      switch (problem.where()) {
        case "fill volume" -> vessel.blame("fill", problem);
        case "count" -> top.blame("count", problem);
        default -> top.blame("edge_share", problem);
      }
    }
  }

  private Optional<Product> product(PlanSection section) {
    PlanValues values = new PlanValues(section);
    String name = values.text("name");
    Optional<Solution> solution = solution(section, values);
    Optional<CriticalTemperature> critical = critical(section, values);
    PlanSection below = section.section("resistance", RESISTANCE);
    Optional<CakeResistance> resistance = resistance(below);
    Optional<Estimate> factor = new PlanValues(below).factor("spread");
    if (solution.isEmpty() || critical.isEmpty() || resistance.isEmpty() || factor.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Product(name, solution.get(), resistance.get(), factor.get(), critical.get()));
  }

  private Optional<Solution> solution(PlanSection section, PlanValues values) {
    double solids = values.number("solids", QuantityKind.FRACTION);
    double density = values.number("solution_density", QuantityKind.DENSITY);
    double unfrozen = values.number("unfrozen_water", QuantityKind.NUMBER);
    if (Double.isNaN(solids + density + unfrozen)) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Solution(
              density,
              solids,
              unfrozen,
              PhaseDensities.TYPICAL,
              Solution.TYPICAL_FROZEN_CONDUCTIVITY));
    } catch (InvalidInputException e) {
      for (Problem problem : e.problems()) {
        switch (problem.where()) {
          case "solution density" -> section.blame("solution_density", problem);
          case "unfrozen water" -> section.blame("unfrozen_water", problem);
          default -> section.blame("solids", problem);
        }
      }
      return Optional.empty();
    }
  }

  private Optional<CriticalTemperature> critical(PlanSection section, PlanValues values) {
    Optional<Estimate> temperature = values.temperature("critical_temperature");
    if (temperature.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new CriticalTemperature(CriticalTemperature.Kind.COLLAPSE, temperature.get()));
    } catch (InvalidInputException e) {
      problems.refused(section, "critical_temperature", e);
      return Optional.empty();
    }
  }

  private Optional<CakeResistance> resistance(PlanSection section) {
    PlanValues values = new PlanValues(section);
    double r0 = values.number("r0", QuantityKind.CAKE_RESISTANCE);
    double a1 = values.number("a1", QuantityKind.CAKE_RESISTANCE_PER_DEPTH);
    double a2 = values.number("a2", QuantityKind.PER_LENGTH);
    if (Double.isNaN(r0 + a1 + a2)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new CakeResistance(r0, a1, a2));
    } catch (InvalidInputException e) {
      problems.refused(section, "r0", e);
      return Optional.empty();
    }
  }

  private Optional<Vial> vial(PlanSection section) {
    String type = new PlanValues(section).text("type");
    PlanSection below = section.section("heat_transfer", HEAT_TRANSFER);
    Optional<HeatTransfer> heat = heatTransfer(below);
    Optional<Estimate> factor = new PlanValues(below).factor("spread");
    if (type.isEmpty()) {
      return Optional.empty();
    }
    Optional<Iso8362Vial> size = Iso8362Vial.find(type);
    if (size.isEmpty()) {
      String known =
          String.join(", ", Arrays.stream(Iso8362Vial.values()).map(Iso8362Vial::size).toList());
      section.blame(
          "type",
          new Problem(
              "unknown-vessel",
              "vessel '" + type + "'",
              "",
              "is not known",
              "use one of " + known));
    }
    if (size.isEmpty() || heat.isEmpty() || factor.isEmpty()) {
      return Optional.empty();
    }
    return size.map(vial -> vial.withHeatTransfer(heat.get(), factor.get()));
  }

  private Optional<HeatTransfer> heatTransfer(PlanSection section) {
    PlanValues values = new PlanValues(section);
    double a = values.number("a", QuantityKind.HEAT_TRANSFER);
    double b = values.number("b", QuantityKind.HEAT_TRANSFER_PER_PRESSURE);
    double c = values.number("c", QuantityKind.PER_PRESSURE);
    if (Double.isNaN(a + b + c)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new HeatTransfer(a, b, c));
    } catch (InvalidInputException e) {
      problems.refused(section, "a", e);
      return Optional.empty();
    }
  }
}
