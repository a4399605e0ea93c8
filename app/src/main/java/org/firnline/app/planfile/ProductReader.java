package org.firnline.app.planfile;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Product;
import org.firnline.lab.Solution;
import org.firnline.units.QuantityKind;

/** Reads what is dried. */
final class ProductReader {
  private static final List<String> CRITICAL_KINDS =
      List.of("collapse", "glass_transition", "eutectic");

  private final PlanSection section;
  private final PlanProblems problems;

  ProductReader(PlanSection item, PlanProblems problems) {
    this.section = item.section("product", PlanKeys.in("product"));
    this.problems = problems;
  }

  Optional<Product> read() {
    PlanValues values = new PlanValues(section);
    String name = values.text("name");
    Optional<Solution> solution = solution(values);
    Optional<CriticalTemperature> critical = critical(values);
    PlanSection below = section.section("resistance", PlanKeys.in("product.resistance"));
    Optional<CakeResistance> resistance = resistance(below);
    Optional<Estimate> factor = new PlanValues(below).factor("spread");
    if (solution.isEmpty() || critical.isEmpty() || resistance.isEmpty() || factor.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Product(name, solution.get(), resistance.get(), factor.get(), critical.get()));
  }

  private Optional<Solution> solution(PlanValues values) {
    double solids = values.number("solids", QuantityKind.FRACTION);
    double density = values.number("solution_density", QuantityKind.DENSITY);
    double unfrozen = values.number("unfrozen_water", QuantityKind.NUMBER);
    double conductivity = values.number("frozen_conductivity", QuantityKind.CONDUCTIVITY);
    PlanSection below = section.section("densities", PlanKeys.in("product.densities"));
    Optional<PhaseDensities> phases = densities(below);
    if (Double.isNaN(solids + density + unfrozen + conductivity) || phases.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Solution(density, solids, unfrozen, phases.get(), conductivity));
    } catch (InvalidInputException e) {
      for (Problem problem : e.problems()) {
        switch (problem.where()) {
          case "solution density" -> section.blame("solution_density", problem);
          case "unfrozen water" -> section.blame("unfrozen_water", problem);
          case "frozen conductivity" -> section.blame("frozen_conductivity", problem);
          default -> section.blame("solids", problem);
        }
      }
      return Optional.empty();
    }
  }

  private Optional<PhaseDensities> densities(PlanSection below) {
    PlanValues values = new PlanValues(below);
    double ice = values.number("ice", QuantityKind.DENSITY);
    double solids = values.number("solids", QuantityKind.DENSITY);
    double unfrozen = values.number("unfrozen", QuantityKind.DENSITY);
    if (Double.isNaN(ice + solids + unfrozen)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PhaseDensities(ice, solids, unfrozen));
    } catch (InvalidInputException e) {
      problems.refused(below, ice > 0 ? solids > 0 ? "unfrozen" : "solids" : "ice", e);
      return Optional.empty();
    }
  }

  private Optional<CriticalTemperature> critical(PlanValues values) {
    Optional<Estimate> temperature = values.temperature("critical_temperature");
    Optional<String> kind = values.choice("critical_kind", CRITICAL_KINDS);
    if (temperature.isEmpty() || kind.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new CriticalTemperature(
              CriticalTemperature.Kind.valueOf(kind.get().toUpperCase(Locale.ROOT)),
              temperature.get()));
    } catch (InvalidInputException e) {
      problems.refused(section, "critical_temperature", e);
      return Optional.empty();
    }
  }

  private Optional<CakeResistance> resistance(PlanSection below) {
    PlanValues values = new PlanValues(below);
    double r0 = values.number("r0", QuantityKind.CAKE_RESISTANCE);
    double a1 = values.number("a1", QuantityKind.CAKE_RESISTANCE_PER_DEPTH);
    double a2 = values.number("a2", QuantityKind.PER_LENGTH);
    if (Double.isNaN(r0 + a1 + a2)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new CakeResistance(r0, a1, a2));
    } catch (InvalidInputException e) {
      problems.refused(below, "r0", e);
      return Optional.empty();
    }
  }
}
