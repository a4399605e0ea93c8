package org.firnline.lab;

/**
 * A number of equal vessels with the same product.
 *
 * @param product what is in them
 * @param vial the vessel
 * @param fill liquid volume in each, m3; positive, at most {@link Vessel#largestFill()}
 * @param count how many; 1 or more
 * @param edgeShare share of them that stand at an edge of the shelf and get more heat, 0 to 1
 */
public record LoadItem(Product product, Vial vial, double fill, int count, double edgeShare) {

  public LoadItem {
    Check.positive(fill, "fill volume", "m3");
    Check.that(
        fill <= vial.largestFill(),
        "fill-too-large",
        "fill volume",
        "fill volume %.3g mL in vial %s (brimful %.3g mL)"
            .formatted(fill * 1e6, vial.name(), vial.brimfulVolume() * 1e6),
        "leaves no headspace for freezing and drying",
        "use at most %.3g mL or a larger vial".formatted(vial.largestFill() * 1e6));
    Check.that(
        count >= 1, "count-range", "count", "count " + count, "must be 1 or more", "give a count");
    Check.that(
        edgeShare >= 0 && edgeShare <= 1,
        "share-range",
        "share at an edge",
        "share at an edge " + edgeShare,
        "must lie between 0 and 1",
        "give for instance 30 %");
  }

  /** Ice in one vessel, kg. */
  public double icePerVessel() {
    return product.solution().iceMass(fill);
  }

  /** Ice in all vessels, kg. */
  public double totalIce() {
    return count * icePerVessel();
  }

  /** Depth of the frozen product in one vessel, m. */
  public double frozenDepth() {
    return product.solution().frozenVolume(fill) / vial.innerArea();
  }
}
