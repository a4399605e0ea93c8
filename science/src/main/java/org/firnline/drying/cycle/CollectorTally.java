package org.firnline.drying.cycle;

/**
 * What ended on the collector.
 *
 * @param ice kg, at the end of the cycle
 * @param fullAt when it held as much as it can, s; infinite if it never did. From then on the
 *     simulation is too friendly: a full collector takes less vapor and shuts its own pipe, of
 *     which no law is known.
 */
public record CollectorTally(double ice, double fullAt) {

  /** Whether it was asked for more than it holds. */
  public boolean overfilled() {
    return fullAt < Double.POSITIVE_INFINITY;
  }
}
