package org.firnline.matter.solvent;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.ResourceTable;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityKind;
import org.firnline.units.Unit;

/** The solvents that ship with the program, from {@code solvents.csv}. */
public final class Solvents {

  private static final Unit CELSIUS = Unit.parse("°C");
  private static final double KILO = 1_000;

  private static final List<Solvent> ALL =
      ResourceTable.read(Solvents.class, "solvents.csv").stream().map(Solvents::read).toList();

  private Solvents() {}

  /** Every solvent, by name. */
  public static List<Solvent> all() {
    return ALL;
  }

  /** The solvent called {@code name}, whatever its capitals. */
  public static Optional<Solvent> find(String name) {
    return ALL.stream()
        .filter(solvent -> solvent.name().equalsIgnoreCase(name.strip()))
        .findFirst();
  }

  private static Solvent read(ResourceTable.Row row) {
    return new Solvent(
        row.text("name"),
        kelvin(row.number("melting_degC")),
        kelvin(row.number("boiling_degC")),
        KILO * row.number("fusion_kJ_per_mol"),
        row.number("vaporPressureAt25degC_Pa"),
        KILO * row.number("vaporization_kJ_per_mol"),
        row.source(),
        row.source("vapor_"),
        row.text("materials"),
        row.text("people"));
  }

  private static double kelvin(double celsius) {
    return Quantity.of(celsius, CELSIUS, QuantityKind.TEMPERATURE).si();
  }
}
