package org.firnline.lab;

import java.util.Arrays;
import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;

/**
 * Nominal injection vials of glass tubing, sizes 2R to 30R.
 *
 * <p>Source: ISO 8362-1:2009 (dimensions from memory; 2R outer diameter and height found). They are
 * nominal: tolerances run to ±0.25 mm in diameter and ±1.5 mL in overflow volume.
 *
 * <p>The heat-transfer coefficient is built from kinetic theory for an average tubing bottom with a
 * mean gap of 0.4 mm: a = 10 W/(m2 K), b = 1.04 W/(m2 K Pa), c = 0.0231 1/Pa. It lies inside the
 * published bands for center vials (14 to 20 W/(m2 K) at 10 Pa, from memory) and is no measurement.
 */
public enum Iso8362Vial {
  R2("2R", 16, 1.0, 35, 4),
  R4("4R", 16, 1.0, 45, 6),
  R6("6R", 22, 1.0, 40, 10),
  R8("8R", 22, 1.0, 45, 11.5),
  R10("10R", 24, 1.0, 45, 13.5),
  R15("15R", 24, 1.0, 60, 19),
  R20("20R", 30, 1.2, 55, 26),
  R25("25R", 30, 1.2, 65, 32.5),
  R30("30R", 30, 1.2, 75, 37.5);

  /** Typical heat transfer to the bottom of a tubing vial. */
  public static final HeatTransfer TYPICAL_HEAT_TRANSFER = new HeatTransfer(10, 1.04, 0.0231);

  /** Relative doubt about {@link #TYPICAL_HEAT_TRANSFER} for a vial nobody has measured. */
  public static final Estimate TYPICAL_HEAT_TRANSFER_FACTOR =
      new Estimate(
          1,
          0.15,
          new Provenance.Published(
              new Source(
                  "kinetic theory for an average tubing bottom, gap 0.4 mm; inside the bands of Pikal, Roy & Shah (1984)",
                  Source.Status.DERIVED)));

  private final String size;
  private final double outerDiameter_mm;
  private final double wallThickness_mm;
  private final double height_mm;
  private final double brimful_mL;

  Iso8362Vial(
      String size,
      double outerDiameter_mm,
      double wallThickness_mm,
      double height_mm,
      double brimful_mL) {
    this.size = size;
    this.outerDiameter_mm = outerDiameter_mm;
    this.wallThickness_mm = wallThickness_mm;
    this.height_mm = height_mm;
    this.brimful_mL = brimful_mL;
  }

  /** The size as printed in the standard, such as {@code 10R}. */
  public String size() {
    return size;
  }

  /** The size printed as {@code text}, ignoring case and blanks. */
  public static Optional<Iso8362Vial> find(String text) {
    String wanted = text.strip();
    return Arrays.stream(values()).filter(vial -> vial.size.equalsIgnoreCase(wanted)).findFirst();
  }

  /** The vial with its nominal dimensions and typical heat transfer. */
  public Vial nominal() {
    return withHeatTransfer(TYPICAL_HEAT_TRANSFER, TYPICAL_HEAT_TRANSFER_FACTOR);
  }

  /** The vial with its nominal dimensions and a heat transfer known from elsewhere. */
  public Vial withHeatTransfer(HeatTransfer heatTransfer, Estimate factor) {
    return new Vial(
        size,
        outerDiameter_mm / 1_000,
        wallThickness_mm / 1_000,
        height_mm / 1_000,
        brimful_mL / 1e6,
        heatTransfer,
        factor);
  }
}
