package org.firnline.planning;

/**
 * How vessels of one load differ from each other: spread across a load, not ignorance about it.
 *
 * <p>Factors are lognormal with median 1, the fill is normal.
 *
 * @param heatTransfer relative standard deviation of K_v between vessels at the same kind of place
 * @param resistance relative standard deviation of R_0 and A_1 between vessels
 * @param fill relative standard deviation of the fill
 * @param edgeFactor K_v of a vessel at an edge of the shelf over that of a vessel inside
 */
public record VesselVariation(
    double heatTransfer, double resistance, double fill, double edgeFactor) {

  /**
   * Usual for tubing vials with uncontrolled nucleation: K_v 7 %, R_p 12 %, fill 1 %, edge 1.3
   * times the center at 10 Pa. Source: from memory; that edge and center differ is published
   * (Rambhatla &amp; Pikal, AAPS PharmSciTech 4(2), 2003).
   */
  public static final VesselVariation USUAL = new VesselVariation(0.07, 0.12, 0.01, 1.3);
}
