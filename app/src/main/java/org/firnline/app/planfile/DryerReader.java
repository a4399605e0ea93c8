package org.firnline.app.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.lab.Capability;
import org.firnline.lab.Chamber;
import org.firnline.lab.Collector;
import org.firnline.lab.Dryer;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Gauge;
import org.firnline.lab.Range;
import org.firnline.lab.ShelfLayout;
import org.firnline.lab.Shelves;
import org.firnline.units.QuantityKind;

/** Reads the machine. */
final class DryerReader {
  private static final String NONE = "none";

  private final PlanSection section;
  private final PlanProblems problems;
  private final PlanValues values;

  DryerReader(PlanSection top, PlanProblems problems) {
    this.section = top.section("dryer", PlanKeys.in("dryer"));
    this.problems = problems;
    this.values = new PlanValues(section);
  }

  /** Steps of primary drying that its programmer takes; 0 after a problem. */
  int steps() {
    return values.count("steps");
  }

  Optional<Dryer> read() {
    String name = values.text("name");
    Part<Shelves> shelves = shelves();
    Part<Range> control = orNone("pressure_range", QuantityKind.PRESSURE);
    Optional<Collector> collector = collector(below("collector"));
    Optional<Capability> capability = capability(below("capability"));
    Optional<Chamber> chamber = chamber(below("chamber"));
    List<Gauge> gauges = gauges(below("gauges"));
    boolean whole =
        shelves.usable()
            && control.usable()
            && collector.isPresent()
            && capability.isPresent()
            && chamber.isPresent();
    if (!whole) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Dryer(
              name,
              shelves.value(),
              control.value(),
              capability.get(),
              collector.get(),
              chamber.get(),
              gauges));
    } catch (InvalidInputException e) {
      String where = e.problems().get(0).where();
      problems.refused(
          section,
          where.contains("pressure")
              ? "pressure_range"
              : where.contains("gauge") ? "gauges" : "name",
          e);
      return Optional.empty();
    }
  }

  private PlanSection below(String key) {
    return section.section(key, PlanKeys.in("dryer." + key));
  }

  /**
   * What a dryer may lack.
   *
   * @param usable whether it was read; false after a problem
   * @param value empty where the dryer has none
   */
  private record Part<T>(boolean usable, Optional<T> value) {

    static <T> Part<T> none() {
      return new Part<>(true, Optional.empty());
    }

    static <T> Part<T> read(Optional<T> value) {
      return new Part<>(value.isPresent(), value);
    }
  }

  private Part<Range> orNone(String key, QuantityKind kind) {
    boolean none = section.has(key) && values.text(key).equalsIgnoreCase(NONE);
    return none ? Part.none() : Part.read(values.range(key, kind));
  }

  private Part<Shelves> shelves() {
    Part<Range> range = orNone("shelf_range", QuantityKind.TEMPERATURE);
    if (range.value().isEmpty()) {
      return new Part<>(range.usable(), Optional.empty());
    }
    double ramp = values.number("ramp", QuantityKind.TEMPERATURE_RATE);
    Optional<ShelfLayout> layout =
        section.has("shelves") ? layout(below("shelves")) : Optional.empty();
    Optional<EdgeHeat> edge = section.has("edge") ? edge(below("edge")) : Optional.empty();
    if (Double.isNaN(ramp)) {
      return Part.read(Optional.empty());
    }
    try {
      return Part.read(Optional.of(new Shelves(range.value().get(), ramp, layout, edge)));
    } catch (InvalidInputException e) {
      problems.refused(
          section, e.problems().get(0).where().contains("ramp") ? "ramp" : "shelf_range", e);
      return Part.read(Optional.empty());
    }
  }

  private Optional<ShelfLayout> layout(PlanSection below) {
    PlanValues inside = new PlanValues(below);
    int count = inside.count("count");
    double width = inside.number("width", QuantityKind.LENGTH);
    double depth = inside.number("depth", QuantityKind.LENGTH);
    double clearance = inside.number("clearance", QuantityKind.LENGTH);
    if (count < 1 || Double.isNaN(width + depth + clearance)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new ShelfLayout(count, width, depth, clearance));
    } catch (InvalidInputException e) {
      problems.refused(below, width > 0 ? depth > 0 ? "clearance" : "depth" : "width", e);
      return Optional.empty();
    }
  }

  /** A ratio or a side wall, never both: the wall would count twice. */
  private Optional<EdgeHeat> edge(PlanSection below) {
    PlanValues inside = new PlanValues(below);
    boolean side = below.has("side") || below.has("wall");
    if (side && below.has("ratio")) {
      below.blame(
          "ratio",
          new Problem(
              "edge-twice", "an edge ratio", "", "stands beside a side wall", "keep one of them"));
      return Optional.empty();
    }
    try {
      if (side) {
        double wall = inside.number("wall", QuantityKind.TEMPERATURE);
        Optional<Estimate> heat = inside.estimate("side", QuantityKind.HEAT_TRANSFER);
        return Double.isNaN(wall)
            ? Optional.empty()
            : heat.map(known -> new EdgeHeat.Side(known, wall));
      }
      double at = inside.number("at", QuantityKind.PRESSURE);
      Optional<Estimate> ratio = inside.estimate("ratio", QuantityKind.NUMBER);
      return Double.isNaN(at)
          ? Optional.empty()
          : ratio.map(known -> new EdgeHeat.Ratio(known, at));
    } catch (InvalidInputException e) {
      problems.refused(below, side ? "side" : "ratio", e);
      return Optional.empty();
    }
  }

  private Optional<Collector> collector(PlanSection below) {
    PlanValues inside = new PlanValues(below);
    double capacity = inside.number("capacity", QuantityKind.MASS);
    double rate = inside.number("rate", QuantityKind.MASS_FLOW);
    double temperature = inside.number("temperature", QuantityKind.TEMPERATURE);
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
    PlanValues inside = new PlanValues(below);
    boolean line = below.has("slope") || below.has("threshold");
    try {
      return line ? line(inside) : duct(inside);
    } catch (InvalidInputException e) {
      problems.refused(below, line ? "slope" : "duct_diameter", e);
      return Optional.empty();
    }
  }

  private static Optional<Capability> duct(PlanValues inside) {
    double diameter = inside.number("duct_diameter", QuantityKind.LENGTH);
    double discharge = inside.number("discharge", QuantityKind.NUMBER);
    double vapor = inside.number("vapor_temperature", QuantityKind.TEMPERATURE);
    if (Double.isNaN(diameter + discharge + vapor)) {
      return Optional.empty();
    }
    double area = Math.PI / 4 * diameter * diameter;
    return Optional.of(new Capability.Duct(area, discharge, vapor));
  }

  private static Optional<Capability> line(PlanValues inside) {
    double slope = inside.number("slope", QuantityKind.MASS_FLOW_PER_PRESSURE);
    double threshold = inside.number("threshold", QuantityKind.PRESSURE);
    if (Double.isNaN(slope + threshold)) {
      return Optional.empty();
    }
    return Optional.of(new Capability.Line(slope, threshold));
  }

  private Optional<Chamber> chamber(PlanSection below) {
    PlanValues inside = new PlanValues(below);
    OptionalDouble volume = inside.optionalNumber("volume", QuantityKind.VOLUME);
    OptionalDouble speed = inside.optionalNumber("pumping_speed", QuantityKind.VOLUME_FLOW);
    if (Double.isNaN(volume.orElse(1) + speed.orElse(1))) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Chamber(volume, speed));
    } catch (InvalidInputException e) {
      problems.refused(below, volume.orElse(1) > 0 ? "pumping_speed" : "volume", e);
      return Optional.empty();
    }
  }

  private List<Gauge> gauges(PlanSection below) {
    PlanValues inside = new PlanValues(below);
    List<Gauge> gauges = new ArrayList<>();
    inside.optionalText("capacitance").map(Gauge.Capacitance::new).ifPresent(gauges::add);
    inside
        .optionalText("thermal_conductivity")
        .ifPresent(
            name ->
                inside
                    .estimate("vapor_excess", QuantityKind.NUMBER)
                    .filter(excess -> positive(below, excess))
                    .ifPresent(excess -> gauges.add(new Gauge.ThermalConductivity(name, excess))));
    return gauges;
  }

  private static boolean positive(PlanSection below, Estimate excess) {
    if (excess.best() > 0) {
      return true;
    }
    below.blame(
        "vapor_excess",
        new Problem("not-positive", "the excess", "", "must be above 0", "write for instance 0.6"));
    return false;
  }
}
