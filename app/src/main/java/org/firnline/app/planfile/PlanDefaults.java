package org.firnline.app.planfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;
import org.firnline.evidence.Source.Status;

/** The value of every key that may be left out, each with its origin. */
public final class PlanDefaults {
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

  /** The default of a key, if it may be left out. */
  public static Optional<Assumption> of(String path) {
    return Optional.ofNullable(BY_PATH.get(path));
  }

  private static void assumed(String path, String text, String reason) {
    BY_PATH.put(path, new Assumption(path, text, new Provenance.Assumed(reason)));
  }

  private static void published(String path, String text, String citation, Status status) {
    BY_PATH.put(
        path, new Assumption(path, text, new Provenance.Published(new Source(citation, status))));
  }
}
