package org.firnline.app.planfile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;
import org.firnline.evidence.Source.Status;

/** The value of every key that may be left out, each with its origin. */
public final class PlanDefaults {
  private static final Pattern FURTHER_ITEM = Pattern.compile("^also\\[[0-9]+]\\.");
  private static final Map<String, Assumption> BY_PATH = new LinkedHashMap<>();

  static {
    assumed("plan", "Untitled plan", "nothing was typed");
    assumed("product.name", "product", "nothing was typed");
    assumed("product.solids", "5 %", "a usual strength for a first try");
    assumed("product.solution_density", "1.02 g/mL", "water with about 5 % of solids");
    assumed("product.unfrozen_water", "0", "all water freezes; the longest primary drying");
    published(
        "product.critical_temperature",
        "-32 °C +- 2 K",
        "glass transition of frozen sucrose solutions, Levine & Slade (1988); cautious for"
            + " sugary and plant material",
        Status.FROM_MEMORY);
    published(
        "product.resistance.r0",
        "4.8e4 m/s",
        "default inside the band 1 to 10 cm2 Torr h/g for cakes of 5 % solids",
        Status.DERIVED);
    published(
        "product.resistance.a1",
        "4.8e7 1/s",
        "default inside the band 1 to 10 cm2 Torr h/g for cakes of 5 % solids",
        Status.DERIVED);
    assumed("product.resistance.a2", "0 1/m", "no leveling off; the cautious side");
    assumed("product.resistance.spread", "25 %", "nobody has measured this cake");
    published(
        "vessel.heat_transfer.a",
        "10 W/m2/K",
        "kinetic theory, average tubing vial, gap 0.4 mm",
        Status.DERIVED);
    published(
        "vessel.heat_transfer.b",
        "1.04 W/m2/K/Pa",
        "kinetic theory, average tubing vial, gap 0.4 mm",
        Status.DERIVED);
    published(
        "vessel.heat_transfer.c",
        "0.0231 1/Pa",
        "kinetic theory, average tubing vial, gap 0.4 mm",
        Status.DERIVED);
    vessels();
    wishes();
    assumed("vessel.heat_transfer.spread", "15 %", "nobody has measured these vials");
    assumed("edge_share", "30 %", "a full shelf of a bench dryer");
    assumed("dryer.name", "bench dryer", "nothing was typed");
    assumed("dryer.shelf_range", "-45 °C to 40 °C", "usual for a bench shelf dryer");
    assumed("dryer.pressure_range", "5 Pa to 50 Pa", "usual for a bench shelf dryer");
    assumed("dryer.ramp", "0.5 K/min", "usual for a bench shelf dryer");
    assumed("dryer.collector.capacity", "4 kg", "usual for a bench shelf dryer");
    assumed("dryer.collector.temperature", "-55 °C", "usual for a bench shelf dryer");
    assumed("dryer.collector.rate", "2 kg/d", "usual for a bench shelf dryer");
    assumed("dryer.capability.duct_diameter", "80 mm", "usual for a bench shelf dryer");
    published(
        "dryer.capability.discharge", "0.8", "0.7 to 0.9 is usual for a duct", Status.FROM_MEMORY);
  }

  private PlanDefaults() {}

  private static void vessels() {
    assumed("owner", "me", "nothing was typed");
    assumed("room", "22 °C", "a usual room");
    assumed("vessel.kind", "vial", "nothing was typed");
    assumed("product.critical_kind", "collapse", "what people see happen");
    assumed("product.frozen_conductivity", "2.3 W/m/K", "frozen dilute solutions, like ice");
    assumed("product.densities.ice", "917 kg/m3", "ice");
    published(
        "product.densities.solids",
        "1590 kg/m3",
        "crystalline sucrose, handbook",
        Status.FROM_MEMORY);
    assumed("product.densities.unfrozen", "1000 kg/m3", "water");
    for (String kind : List.of("flask", "tray", "piece")) {
      assumed("edge_share@" + kind, "0 %", "no edge is known for this vessel");
      assumed("vessel.type@" + kind, kind, "nothing was typed");
    }
    published(
        "vessel.heat_transfer.a@tray",
        "8 W/m2/K",
        "kinetic theory, uneven bottom, gap 0.8 mm",
        Status.DERIVED);
    published(
        "vessel.heat_transfer.b@tray",
        "1.04 W/m2/K/Pa",
        "kinetic theory, uneven bottom, gap 0.8 mm",
        Status.DERIVED);
    published(
        "vessel.heat_transfer.c@tray",
        "0.0462 1/Pa",
        "kinetic theory, uneven bottom, gap 0.8 mm",
        Status.DERIVED);
    assumed("vessel.heat_transfer.spread@tray", "25 %", "nobody has measured this tray");
    assumed("vessel.height@tray", "30 mm", "a usual tray");
    assumed("vessel.frozen", "puddle", "nothing was typed; the slower way");
    assumed("vessel.wall@flask", "2 mm", "a usual flask made for vacuum");
    published(
        "vessel.glass_conductivity",
        "1.1 W/m/K",
        "borosilicate glass, handbook",
        Status.FROM_MEMORY);
    published(
        "vessel.room_heat_transfer",
        "7 W/m2/K +- 1.5 W/m2/K",
        "free convection and radiation at a cold flask, 5 to 10 W/(m2 K), handbooks",
        Status.FROM_MEMORY);
    assumed("vessel.port_resistance", "0 Pa.s/kg +- 0 Pa.s/kg", "a wide open port");
    assumed(
        "vessel.above.heat_transfer",
        "8 W/m2/K +- 3 W/m2/K",
        "radiation and gas between near surfaces");
    published(
        "vessel.above.cake_conductivity",
        "0.05 W/m/K",
        "dried plants and food, 0.03 to 0.1 W/(m K)",
        Status.FROM_MEMORY);
    published(
        "dryer.capability.vapor_temperature",
        "20 °C",
        "vapor in the duct has the temperature of the room",
        Status.FROM_MEMORY);
    assumed("dryer.edge.at", "10 Pa", "where edge ratios are usually measured");
    published(
        "dryer.gauges.vapor_excess",
        "0.6 +- 0.2",
        "Patel, Doen & Pikal (2010)",
        Status.FROM_MEMORY);
  }

  private static void wishes() {
    assumed("wishes.risk", "5 %", "one load in twenty");
    assumed("dryer.steps", "3", "a programmer of a bench dryer");
    assumed("wishes.secondary.wettest", "20 %", "15 to 20 % are left in amorphous cakes");
    assumed("wishes.secondary.equilibrium", "0.5 %", "dry vapor");
    published(
        "wishes.secondary.rate",
        "3e-5 1/s",
        "at 25 °C, 1e-5 to 1e-4 1/s at 20 to 40 °C",
        Status.FROM_MEMORY);
    published("wishes.secondary.activation", "40 kJ/mol", "30 to 60 kJ/mol", Status.FROM_MEMORY);
    published(
        "wishes.secondary.dry_glass_transition",
        "62 °C",
        "dry sucrose; published values differ by 10 K",
        Status.FROM_MEMORY);
    published("wishes.secondary.glass_constant", "4.7", "sucrose and water", Status.FROM_MEMORY);
    assumed("wishes.secondary.margin", "5 K", "a cautious distance");
    assumed("wishes.secondary.temperature", "25 °C", "usual");
  }

  /** The default of a key, if it may be left out; that of a vial where vessels differ. */
  public static Optional<Assumption> of(String path) {
    return of(path, "");
  }

  /**
   * The default of a key for a kind of vessel. Further items of a load have the defaults of the
   * first.
   */
  static Optional<Assumption> of(String path, String kind) {
    String plain = FURTHER_ITEM.matcher(path).replaceFirst("");
    Assumption found = BY_PATH.get(plain + "@" + kind);
    Optional<Assumption> filled = Optional.ofNullable(found == null ? BY_PATH.get(plain) : found);
    return filled.map(value -> new Assumption(path, value.text(), value.provenance()));
  }

  private static void assumed(String path, String text, String reason) {
    BY_PATH.put(path, new Assumption(path, text, new Provenance.Assumed(reason)));
  }

  private static void published(String path, String text, String citation, Status status) {
    BY_PATH.put(
        path, new Assumption(path, text, new Provenance.Published(new Source(citation, status))));
  }
}
