package org.firnline.lab;

/**
 * A flat piece of tissue or food on a mesh or rod tray, open to vapor and heat on both faces. By
 * symmetry nothing crosses its mid-plane, so half of it is a layer heated from above only.
 *
 * @param name what people call it; not blank
 * @param thickness between its faces when fresh, m; positive
 * @param faceArea of one face, m2; positive
 * @param heat from the warm surfaces to each face
 */
public record Piece(String name, double thickness, double faceArea, HeatFromAbove heat)
    implements Vessel {

  /** Fill volumes are measured; a piece may be this much larger than thickness times area. */
  private static final double ROUNDING = 1e-9;

  public Piece {
    Check.named(name, "piece name");
    Check.positive(thickness, "thickness of the piece", "m");
    Check.positive(faceArea, "face area of the piece", "m2");
  }

  /** The volume of the whole piece, m3. */
  @Override
  public double largestFill() {
    return thickness * faceArea * (1 + ROUNDING);
  }

  @Override
  public String fillRule() {
    return "is more than the piece itself";
  }

  /** Half of the frozen thickness: two fronts meet in the middle. */
  @Override
  public double frozenThickness(double frozenVolume_m3) {
    return frozenVolume_m3 / faceArea / 2;
  }

  @Override
  public <T> T fold(Cases<T> cases) {
    return cases.piece(this);
  }
}
