package org.firnline.lab;

/**
 * A number of equal vessels with the same product.
 *
 * @param product what is in them
 * @param vessel the container
 * @param fill liquid volume in each (for a piece, its volume), m3; positive, at most {@link
 *     Vessel#largestFill()}
 * @param count how many; 1 or more
 * @param edgeShare share of them that stand at an edge of the shelf and get more heat, 0 to 1
 */
public record LoadItem(Product product, Vessel vessel, double fill, int count, double edgeShare) {

  public LoadItem {
    Check.positive(fill, "fill volume", "m3");
    Check.that(
        fill <= vessel.largestFill(),
        "fill-too-large",
        "fill volume",
        "fill volume " + Check.milliliters(fill) + " in " + vessel.name(),
        vessel.fillRule(),
        "use at most " + Check.milliliters(vessel.largestFill()) + " or a larger vessel");
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

  /**
   * The vessel of a load of vials.
   *
   * @throws IllegalStateException if the vessel is of another kind
   */
  public Vial vial() {
    if (vessel instanceof Vial vial) {
      return vial;
    }
    throw new IllegalStateException("vessel " + vessel.name() + " is no vial");
  }

  /** Ice in one vessel, kg. */
  public double icePerVessel() {
    return product.solution().iceMass(fill);
  }

  /** Ice in all vessels, kg. */
  public double totalIce() {
    return count * icePerVessel();
  }

  /** Way of the front through the frozen product in one vessel, m. */
  public double frozenDepth() {
    return vessel.frozenThickness(product.solution().frozenVolume(fill));
  }
}
