package org.firnline.matter.solute;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.ResourceTable;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityKind;
import org.firnline.units.Unit;

/**
 * Published critical temperatures of solutes, foods and biological material, with their spread.
 *
 * <p>Reports on one material scatter by about 2 K, for foods by more. Many rows are recalled and
 * not retrieved; each says so. A value for the pure material is no value for a formulation.
 *
 * <p>Source: each row of {@code published-temperatures.csv} names its own.
 */
public final class PublishedTemperatures {

  private static final List<MaterialTemperature> ALL =
      ResourceTable.read(PublishedTemperatures.class, "published-temperatures.csv").stream()
          .map(PublishedTemperatures::read)
          .toList();

  private PublishedTemperatures() {}

  /** Every value, by category and name. */
  public static List<MaterialTemperature> all() {
    return ALL;
  }

  /** Every value published for {@code material}, whatever its capitals; empty if unknown. */
  public static List<MaterialTemperature> of(String material) {
    return ALL.stream().filter(value -> value.material().equalsIgnoreCase(material)).toList();
  }

  /** Materials whose name contains {@code part}, whatever its capitals, each once. */
  public static List<String> materialsLike(String part) {
    String wanted = part.strip().toLowerCase(Locale.ROOT);
    return ALL.stream()
        .map(MaterialTemperature::material)
        .filter(name -> name.toLowerCase(Locale.ROOT).contains(wanted))
        .distinct()
        .toList();
  }

  /**
   * The lowest temperature that is published as a limit for frozen {@code material}: the cautious
   * choice where several publications differ.
   */
  public static Optional<MaterialTemperature> mostCautious(String material) {
    return of(material).stream()
        .filter(value -> value.property().limitsPrimaryDrying())
        .min(Comparator.comparingDouble(value -> value.temperature().best()));
  }

  private static MaterialTemperature read(ResourceTable.Row row) {
    double kelvin =
        Quantity.of(row.number("value_degC"), Unit.parse("°C"), QuantityKind.TEMPERATURE).si();
    return new MaterialTemperature(
        row.text("material"),
        MaterialTemperature.Category.valueOf(constant(row.text("category"))),
        MaterialTemperature.Property.valueOf(constant(row.text("property"))),
        row.text("condition"),
        new Estimate(kelvin, row.number("spread_K"), new Provenance.Published(row.source())));
  }

  private static String constant(String text) {
    return text.toUpperCase(Locale.ROOT).replace(' ', '_');
  }
}
