package org.firnline.lab;

import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;

/**
 * A straight-walled glass vial standing on a shelf.
 *
 * @param name size or catalog name
 * @param outerDiameter m; positive
 * @param wallThickness m; positive and less than half of the outer diameter
 * @param height m; positive
 * @param brimfulVolume liquid volume at overflow, m3; positive
 * @param heatTransfer typical coefficient from the shelf to its bottom, on the outer bottom area
 * @param heatTransferFactor doubt about {@code heatTransfer} as a factor: best near 1, relative
 *     standard deviation, origin
 */
public record Vial(
    String name,
    double outerDiameter,
    double wallThickness,
    double height,
    double brimfulVolume,
    HeatTransfer heatTransfer,
    Estimate heatTransferFactor)
    implements Vessel {

  /** Typical heat transfer over a mean gap of 0.8 mm, as under moulded vials and trays. */
  public static final HeatTransfer UNEVEN_BOTTOM = new HeatTransfer(8, 1.04, 0.0462);

  /** Relative doubt about {@link #UNEVEN_BOTTOM} where nobody has measured. */
  public static final Estimate UNEVEN_BOTTOM_FACTOR =
      new Estimate(
          1,
          0.25,
          new Provenance.Published(
              new Source(
                  "kinetic theory for an uneven bottom, mean gap 0.8 mm; form of Pikal, Roy & Shah (1984)",
                  Source.Status.DERIVED)));

  public Vial {
    Check.named(name, "vial name");
    Check.positive(outerDiameter, "outer diameter of the vial", "m");
    Check.positive(wallThickness, "wall thickness of the vial", "m");
    Check.positive(height, "height of the vial", "m");
    Check.positive(brimfulVolume, "brimful volume of the vial", "m3");
    Check.that(
        2 * wallThickness < outerDiameter,
        "wall-too-thick",
        "wall thickness of the vial",
        "a wall of " + Check.millimeters(wallThickness),
        "leaves no room inside an outer diameter of " + Check.millimeters(outerDiameter),
        "check both dimensions");
    Check.positive(heatTransferFactor.best(), "heat-transfer factor of the vial", "");
  }

  /**
   * A moulded vial by its dimensions, with the heat transfer of a thick, uneven bottom.
   *
   * @param name catalog name
   * @param outerDiameter m
   * @param wallThickness m
   * @param height m
   * @param brimfulVolume m3
   */
  public static Vial moulded(
      String name,
      double outerDiameter,
      double wallThickness,
      double height,
      double brimfulVolume) {
    return new Vial(
        name,
        outerDiameter,
        wallThickness,
        height,
        brimfulVolume,
        UNEVEN_BOTTOM,
        UNEVEN_BOTTOM_FACTOR);
  }

  /** Outer bottom area A_v, to which the heat-transfer coefficient refers, m2. */
  public double outerArea() {
    return Math.PI / 4 * outerDiameter * outerDiameter;
  }

  /** Inner cross-section A_p, to which the cake resistance refers, m2. */
  public double innerArea() {
    double inner = outerDiameter - 2 * wallThickness;
    return Math.PI / 4 * inner * inner;
  }

  /** Half of the brimful volume; common practice, no published source. */
  @Override
  public double largestFill() {
    return brimfulVolume / 2;
  }

  @Override
  public String fillRule() {
    return "leaves no headspace for freezing and drying";
  }

  @Override
  public double frozenThickness(double frozenVolume_m3) {
    return frozenVolume_m3 / innerArea();
  }

  @Override
  public <T> T fold(Cases<T> cases) {
    return cases.vial(this);
  }
}
