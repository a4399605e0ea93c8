package org.firnline.app.planfile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.evidence.Provenance;
import org.firnline.lab.Flask;
import org.firnline.lab.HeatFromAbove;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.Piece;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.firnline.lab.Vial;
import org.firnline.units.Figures;
import org.firnline.units.QuantityKind;

/** Reads in what it is dried: vial, flask, tray or piece. */
final class VesselReader {
  static final List<String> KINDS = List.of("vial", "flask", "tray", "piece");

  private static final List<String> COMMON = List.of("kind", "type", "fill");
  private static final List<String> VIAL =
      List.of("heat_transfer", "outer_diameter", "wall", "height", "brimful");
  private static final List<String> FLASK =
      List.of(
          "volume",
          "frozen",
          "wall_radius",
          "height",
          "area",
          "wall",
          "glass_conductivity",
          "room_heat_transfer",
          "port_resistance");
  private static final List<String> TRAY =
      List.of("length", "width", "height", "heat_transfer", "above");
  private static final List<String> PIECE = List.of("thickness", "face_area", "above");

  /** A cylinder of the sphere's radius and two thirds of its wall is this many radii high. */
  private static final double SHELL_HEIGHT_PER_RADIUS = 4.0 / 3;

  private final PlanSection section;
  private final PlanProblems problems;
  private final PlanValues values;

  VesselReader(PlanSection vessel, PlanProblems problems) {
    this.section = vessel;
    this.problems = problems;
    this.values = new PlanValues(vessel);
  }

  /** The kind in use; that of a vial after a problem. */
  static String kind(PlanSection vessel) {
    return new PlanValues(vessel).choice("kind", KINDS).orElse("vial");
  }

  Optional<Vessel> read(String kind) {
    section.onlyFor(kind, Stream.concat(COMMON.stream(), own(kind).stream()).toList());
    try {
      return switch (kind) {
        case "flask" -> flask().map(Vessel.class::cast);
        case "tray" -> tray().map(Vessel.class::cast);
        case "piece" -> piece().map(Vessel.class::cast);
        default -> vial().map(Vessel.class::cast);
      };
    } catch (InvalidInputException e) {
      problems.refused(section, blamed(e, own(kind)), e);
      return Optional.empty();
    }
  }

  private static List<String> own(String kind) {
    return switch (kind) {
      case "flask" -> FLASK;
      case "tray" -> TRAY;
      case "piece" -> PIECE;
      default -> VIAL;
    };
  }

  /** The key whose words stand in what was refused; the kind where none does. */
  private static String blamed(InvalidInputException refusal, List<String> keys) {
    String where = refusal.problems().get(0).where();
    return keys.stream()
        .filter(key -> where.contains(key.replace('_', ' ')))
        .findFirst()
        .orElse("kind");
  }

  private Optional<Vial> vial() {
    String type = values.text("type");
    PlanSection below = section.section("heat_transfer", PlanKeys.in("vessel.heat_transfer"));
    Optional<HeatTransfer> heat = heatTransfer(below);
    Optional<Estimate> factor = new PlanValues(below).factor("spread");
    if (type.isEmpty()) {
      return Optional.empty();
    }
    if (section.has("outer_diameter")) {
      return ownVial(type, heat, factor);
    }
    Optional<Iso8362Vial> size = Iso8362Vial.find(type);
    if (size.isEmpty()) {
      unknownType(type);
    }
    if (size.isEmpty() || heat.isEmpty() || factor.isEmpty()) {
      return Optional.empty();
    }
    return size.map(vial -> vial.withHeatTransfer(heat.get(), factor.get()));
  }

  private void unknownType(String type) {
    String known =
        String.join(", ", Arrays.stream(Iso8362Vial.values()).map(Iso8362Vial::size).toList());
    section.blame(
        "type",
        new Problem(
            "unknown-vessel",
            "vessel '" + type + "'",
            "",
            "is not known",
            "use one of " + known + ", or give outer_diameter, wall, height and brimful"));
  }

  private Optional<Vial> ownVial(
      String type, Optional<HeatTransfer> heat, Optional<Estimate> factor) {
    double outer = values.number("outer_diameter", QuantityKind.LENGTH);
    double wall = values.number("wall", QuantityKind.LENGTH);
    double height = values.number("height", QuantityKind.LENGTH);
    double brimful = values.number("brimful", QuantityKind.VOLUME);
    if (Double.isNaN(outer + wall + height + brimful) || heat.isEmpty() || factor.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Vial(type, outer, wall, height, brimful, heat.get(), factor.get()));
  }

  private Optional<Tray> tray() {
    String name = values.text("type");
    double length = values.number("length", QuantityKind.LENGTH);
    double width = values.number("width", QuantityKind.LENGTH);
    double height = values.number("height", QuantityKind.LENGTH);
    PlanSection below = section.section("heat_transfer", PlanKeys.in("vessel.heat_transfer"));
    Optional<HeatTransfer> heat = heatTransfer(below);
    Optional<Estimate> factor = new PlanValues(below).factor("spread");
    Optional<HeatFromAbove> above = section.has("above") ? above() : Optional.empty();
    if (Double.isNaN(length + width + height) || heat.isEmpty() || factor.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Tray(name, length, width, height, heat.get(), factor.get(), above));
  }

  private Optional<Piece> piece() {
    String name = values.text("type");
    double thickness = values.number("thickness", QuantityKind.LENGTH);
    double area = values.number("face_area", QuantityKind.AREA);
    Optional<HeatFromAbove> above = above();
    if (Double.isNaN(thickness + area) || above.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Piece(name, thickness, area, above.get()));
  }

  private Optional<HeatFromAbove> above() {
    PlanSection below = section.section("above", PlanKeys.in("vessel.above"));
    PlanValues inside = new PlanValues(below);
    Optional<Estimate> heat = inside.estimate("heat_transfer", QuantityKind.HEAT_TRANSFER);
    double cake = inside.number("cake_conductivity", QuantityKind.CONDUCTIVITY);
    if (heat.isEmpty() || Double.isNaN(cake)) {
      return Optional.empty();
    }
    return Optional.of(new HeatFromAbove(heat.get(), cake));
  }

  private Optional<Flask> flask() {
    String name = values.text("type");
    double volume = values.number("volume", QuantityKind.VOLUME);
    double wall = values.number("wall", QuantityKind.LENGTH);
    double glass = values.number("glass_conductivity", QuantityKind.CONDUCTIVITY);
    Optional<Estimate> room = values.estimate("room_heat_transfer", QuantityKind.HEAT_TRANSFER);
    Optional<Estimate> port = values.estimate("port_resistance", QuantityKind.MOUTH_RESISTANCE);
    Optional<String> frozen = values.choice("frozen", List.of("shell", "puddle"));
    boolean whole =
        !Double.isNaN(volume + wall + glass)
            && room.isPresent()
            && port.isPresent()
            && frozen.isPresent();
    if (!whole) {
      return Optional.empty();
    }
    Optional<Flask.Form> form = frozen.get().equals("shell") ? shell(volume) : puddle(volume);
    return form.map(shape -> new Flask(name, volume, shape, wall, glass, room.get(), port.get()));
  }

  private Optional<Flask.Form> shell(double volume) {
    double sphere = Math.cbrt(3 * volume / (4 * Math.PI));
    double radius = orWorkedOut("wall_radius", sphere, "a sphere of the flask's volume");
    double height =
        orWorkedOut(
            "height", SHELL_HEIGHT_PER_RADIUS * radius, "two thirds of the wall of a sphere");
    return Double.isNaN(radius + height)
        ? Optional.empty()
        : Optional.of(new Flask.Form.Shell(radius, height));
  }

  /** The mean area of a spherical cap: its volume over its depth. */
  private Optional<Flask.Form> puddle(double volume) {
    OptionalDouble stated = values.optionalNumber("area", QuantityKind.AREA);
    if (stated.isPresent()) {
      return Double.isNaN(stated.getAsDouble())
          ? Optional.empty()
          : Optional.of(new Flask.Form.Puddle(stated.getAsDouble()));
    }
    double fill = values.optionalNumber("fill", QuantityKind.VOLUME).orElse(Double.NaN);
    double radius = Math.cbrt(3 * volume / (4 * Math.PI));
    if (!(fill > 0) || !(radius > 0) || fill > volume / 2) {
      return fill > 0 && radius > 0
          ? Optional.of(new Flask.Form.Puddle(Math.PI * radius * radius))
          : Optional.empty();
    }
    double area = fill / capDepth(fill, radius);
    section.assume(
        "area",
        Figures.significant(area * 1e4, 3) + " cm2",
        new Provenance.Assumed("the mean area of what stands in a sphere of the flask's volume"));
    return Optional.of(new Flask.Form.Puddle(area));
  }

  /** Depth of a cap of {@code fill} in a sphere, by halving; at most the radius. */
  private static double capDepth(double fill, double radius) {
    double low = 0;
    double high = radius;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean less = Math.PI * middle * middle * (3 * radius - middle) / 3 < fill;
      low = less ? middle : low;
      high = less ? high : middle;
    }
    return high;
  }

  private double orWorkedOut(String key, double otherwise, String reason) {
    OptionalDouble stated = values.optionalNumber(key, QuantityKind.LENGTH);
    if (stated.isPresent()) {
      return stated.getAsDouble();
    }
    section.assume(
        key, Figures.significant(otherwise * 1e3, 3) + " mm", new Provenance.Assumed(reason));
    return otherwise;
  }

  private Optional<HeatTransfer> heatTransfer(PlanSection below) {
    PlanValues inside = new PlanValues(below);
    double a = inside.number("a", QuantityKind.HEAT_TRANSFER);
    double b = inside.number("b", QuantityKind.HEAT_TRANSFER_PER_PRESSURE);
    double c = inside.number("c", QuantityKind.PER_PRESSURE);
    if (Double.isNaN(a + b + c)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new HeatTransfer(a, b, c));
    } catch (InvalidInputException e) {
      problems.refused(below, "a", e);
      return Optional.empty();
    }
  }
}
