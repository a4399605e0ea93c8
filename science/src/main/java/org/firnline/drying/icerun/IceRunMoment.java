package org.firnline.drying.icerun;

/**
 * Temperatures at one time of an ice run.
 *
 * @param time s
 * @param shelf shelf surface, K; positive
 * @param bottom ice at the bottom of the vessel, K; positive
 */
public record IceRunMoment(double time, double shelf, double bottom) {

  public IceRunMoment {
    if (!Double.isFinite(time) || !(shelf > 0) || !(bottom > 0)) {
      throw new IllegalArgumentException(
          "shelf at " + shelf + " K and bottom at " + bottom + " K at " + time + " s cannot be");
    }
  }
}
