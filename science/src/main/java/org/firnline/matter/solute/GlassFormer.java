package org.firnline.matter.solute;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.ResourceTable;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityKind;
import org.firnline.units.Unit;

/**
 * An amorphous solid whose glass transition is published together with its fall by water.
 *
 * <p>Source: each row of {@code glass-formers.csv} names its own.
 *
 * @param material plain name
 * @param dryTransition T_g of the dry solid, K
 * @param constant k of {@link GordonTaylor1952}
 */
public record GlassFormer(String material, Estimate dryTransition, Estimate constant) {

  private static final List<GlassFormer> ALL =
      ResourceTable.read(GlassFormer.class, "glass-formers.csv").stream()
          .map(GlassFormer::read)
          .toList();

  /** Every glass former in the table. */
  public static List<GlassFormer> all() {
    return ALL;
  }

  /** The glass former called {@code material}, whatever its capitals. */
  public static Optional<GlassFormer> find(String material) {
    return ALL.stream()
        .filter(former -> former.material.equalsIgnoreCase(material.strip()))
        .findFirst();
  }

  /** The model with the best values. */
  public GordonTaylor1952 model() {
    return new GordonTaylor1952(dryTransition.best(), constant.best());
  }

  /** The model one standard deviation to the cautious side: softer when dry, softened more. */
  public GordonTaylor1952 cautiousModel() {
    return new GordonTaylor1952(dryTransition.shifted(-1), constant.shifted(1));
  }

  private static GlassFormer read(ResourceTable.Row row) {
    double kelvin =
        Quantity.of(row.number("dry_degC"), Unit.parse("°C"), QuantityKind.TEMPERATURE).si();
    return new GlassFormer(
        row.text("material"),
        new Estimate(
            kelvin, row.number("dry_spread_K"), new Provenance.Published(row.source("dry_"))),
        new Estimate(
            row.number("constant"),
            row.number("constant_spread"),
            new Provenance.Published(row.source("constant_"))));
  }
}
