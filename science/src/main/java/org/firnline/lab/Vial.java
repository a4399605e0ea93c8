package org.firnline.lab;

import org.firnline.evidence.Estimate;

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

  public Vial {
    Check.positive(outerDiameter, "outer diameter of the vial", "m");
    Check.positive(wallThickness, "wall thickness of the vial", "m");
    Check.positive(height, "height of the vial", "m");
    Check.positive(brimfulVolume, "brimful volume of the vial", "m3");
    Check.that(
        2 * wallThickness < outerDiameter,
        "wall-too-thick",
        "wall thickness of the vial",
        "a wall of " + wallThickness * 1_000 + " mm",
        "leaves no room inside an outer diameter of " + outerDiameter * 1_000 + " mm",
        "check both dimensions");
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

  @Override
  public double largestFill() {
    return brimfulVolume / 2;
  }
}
