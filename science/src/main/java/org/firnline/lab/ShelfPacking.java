package org.firnline.lab;

/**
 * How equal round vessels stand on one rectangular shelf, and how many of them lack neighbors.
 *
 * <p>A corner vessel ends the first or the last row. An edge vessel is any other one with fewer
 * neighbors than the pattern gives. The rest are center vessels.
 *
 * <p>Source: plane geometry; the most vessels in rows, not the densest packing of irregular kind.
 *
 * @param pattern how they stand
 * @param corner vessels at a corner
 * @param edge other vessels at an edge
 * @param center vessels with all their neighbors
 */
public record ShelfPacking(Pattern pattern, int corner, int edge, int center) {

  /** How vessels stand. */
  public enum Pattern {
    /** Rows and columns, four neighbors each. */
    SQUARE,
    /** Rows shifted by half a vessel, six neighbors each. */
    HEXAGONAL
  }

  /** Lengths are measured; a row that misses by this share of a vessel still fits. */
  private static final double SLACK = 1e-9;

  private static final double ROW_PITCH = Math.sqrt(3) / 2;

  /**
   * The most vessels of one pattern on a shelf.
   *
   * @param diameter of a vessel, m; positive
   * @param width of the shelf, m; positive
   * @param depth of the shelf, m; positive
   */
  public static ShelfPacking of(Pattern pattern, double diameter, double width, double depth) {
    Check.positive(diameter, "vessel diameter", "m");
    Check.positive(width, "shelf width", "m");
    Check.positive(depth, "shelf depth", "m");
    double across = width / diameter + SLACK;
    double along = depth / diameter + SLACK;
    if (pattern == Pattern.SQUARE) {
      return counted(pattern, (int) across, (int) across, (int) along);
    }
    ShelfPacking rowsAcross = hexagonal(across, along);
    ShelfPacking rowsAlong = hexagonal(along, across);
    return rowsAlong.total() > rowsAcross.total() ? rowsAlong : rowsAcross;
  }

  /** The pattern that holds more; the square one if they hold the same. */
  public static ShelfPacking fullest(double diameter, double width, double depth) {
    ShelfPacking square = of(Pattern.SQUARE, diameter, width, depth);
    ShelfPacking hexagonal = of(Pattern.HEXAGONAL, diameter, width, depth);
    return hexagonal.total() > square.total() ? hexagonal : square;
  }

  /** Vessels on the shelf. */
  public int total() {
    return corner + edge + center;
  }

  /** Share of vessels at a corner or an edge, 0 to 1; 0 on an empty shelf. */
  public double outerShare() {
    return total() == 0 ? 0 : (double) (corner + edge) / total();
  }

  /** Lengths in vessel diameters. */
  private static ShelfPacking hexagonal(double row, double rows) {
    int longRow = (int) row;
    int shortRow = row - longRow >= 0.5 ? longRow : longRow - 1;
    int count = rows < 1 ? 0 : 1 + (int) ((rows - 1) / ROW_PITCH);
    return counted(Pattern.HEXAGONAL, longRow, shortRow, count);
  }

  /** Rows alternate between {@code odd} vessels (the first) and {@code even}. */
  private static ShelfPacking counted(Pattern pattern, int odd, int even, int rows) {
    int corner = 0;
    int edge = 0;
    int center = 0;
    for (int row = 0; row < rows; row++) {
      int vessels = row % 2 == 0 ? odd : even;
      int ends = Math.min(2, Math.max(0, vessels));
      int between = Math.max(0, vessels - 2);
      if (row == 0 || row == rows - 1) {
        corner += ends;
        edge += between;
      } else {
        edge += ends;
        center += between;
      }
    }
    return new ShelfPacking(pattern, corner, edge, center);
  }
}
