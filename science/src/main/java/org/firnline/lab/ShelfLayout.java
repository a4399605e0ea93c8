package org.firnline.lab;

/**
 * Number and size of a dryer's shelves.
 *
 * @param count shelves in use; 1 or more
 * @param width usable width of one, m; positive
 * @param depth usable depth of one, m; positive
 * @param clearance free height above one, m; positive
 */
public record ShelfLayout(int count, double width, double depth, double clearance) {

  public ShelfLayout {
    Check.that(
        count >= 1,
        "count-range",
        "number of shelves",
        count + " shelves",
        "must be 1 or more",
        "give a count");
    Check.positive(width, "shelf width", "m");
    Check.positive(depth, "shelf depth", "m");
    Check.positive(clearance, "clearance above a shelf", "m");
  }

  /** Area of all shelves, m2. */
  public double area() {
    return count * width * depth;
  }
}
