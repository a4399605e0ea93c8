package org.firnline.app.planfile;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.InvalidInputException;
import org.firnline.lab.Capability;
import org.firnline.lab.Collector;
import org.firnline.lab.Dryer;
import org.firnline.lab.Range;
import org.firnline.units.QuantityKind;

/** Reads the machine. */
final class DryerReader {
  private static final List<String> DRYER =
      List.of("name", "shelf_range", "pressure_range", "ramp", "collector", "capability");
  private static final List<String> COLLECTOR = List.of("capacity", "temperature", "rate");
  private static final List<String> CAPABILITY =
      List.of("duct_diameter", "discharge", "slope", "threshold");

  /** Vapor in the duct has the temperature of the room, ±4 % in flow. */
  private static final double DUCT_TEMPERATURE_K = 293;

  private final PlanSection section;
  private final PlanProblems problems;

  DryerReader(PlanSection top, PlanProblems problems) {
    this.section = top.section("dryer", DRYER);
    this.problems = problems;
  }

  Optional<Dryer> read() {
    PlanValues values = new PlanValues(section);
    String name = values.text("name");
    Optional<Range> shelf = values.range("shelf_range", QuantityKind.TEMPERATURE);
    Optional<Range> pressure = values.range("pressure_range", QuantityKind.PRESSURE);
    double ramp = values.number("ramp", QuantityKind.TEMPERATURE_RATE);
    Optional<Collector> collector = collector(section.section("collector", COLLECTOR));
    Optional<Capability> capability = capability(section.section("capability", CAPABILITY));
    boolean whole =
        shelf.isPresent()
            && pressure.isPresent()
            && collector.isPresent()
            && capability.isPresent()
            && !Double.isNaN(ramp);
    if (!whole) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Dryer(name, shelf.get(), pressure.get(), ramp, capability.get(), collector.get()));
    } catch (InvalidInputException e) {
      problems.refused(section, e.problems().get(0).where().contains("ramp") ? "ramp" : "name", e);
      return Optional.empty();
    }
  }

  private Optional<Collector> collector(PlanSection below) {
    PlanValues values = new PlanValues(below);
    double capacity = values.number("capacity", QuantityKind.MASS);
    double rate = values.number("rate", QuantityKind.MASS_FLOW);
    double temperature = values.number("temperature", QuantityKind.TEMPERATURE);
    if (Double.isNaN(capacity + rate + temperature)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Collector(capacity, rate, temperature));
    } catch (InvalidInputException e) {
      String where = e.problems().get(0).where();
      String key =
          where.contains("rate") && !where.contains("temperature")
              ? "rate"
              : where.contains("capacity") ? "capacity" : "temperature";
      problems.refused(below, key, e);
      return Optional.empty();
    }
  }

  private Optional<Capability> capability(PlanSection below) {
    PlanValues values = new PlanValues(below);
    boolean line = below.has("slope") || below.has("threshold");
    try {
      return line ? line(values) : duct(values);
    } catch (InvalidInputException e) {
      problems.refused(below, line ? "slope" : "duct_diameter", e);
      return Optional.empty();
    }
  }

  private static Optional<Capability> duct(PlanValues values) {
    double diameter = values.number("duct_diameter", QuantityKind.LENGTH);
    double discharge = values.number("discharge", QuantityKind.NUMBER);
    if (Double.isNaN(diameter + discharge)) {
      return Optional.empty();
    }
    double area = Math.PI / 4 * diameter * diameter;
    return Optional.of(new Capability.Duct(area, discharge, DUCT_TEMPERATURE_K));
  }

  private static Optional<Capability> line(PlanValues values) {
    double slope = values.number("slope", QuantityKind.MASS_FLOW_PER_PRESSURE);
    double threshold = values.number("threshold", QuantityKind.PRESSURE);
    if (Double.isNaN(slope + threshold)) {
      return Optional.empty();
    }
    return Optional.of(new Capability.Line(slope, threshold));
  }
}
