package org.firnline.drying.vessel;

import java.util.OptionalDouble;

/**
 * What is around the vessels of a load besides their shelf.
 *
 * @param room temperature of the room, K; positive; felt by flasks
 * @param above temperature of the surface above trays and around pieces, K; empty where it is the
 *     next shelf, as warm as the one below
 */
public record Surroundings(double room, OptionalDouble above) {

  /** A room at 22 °C and shelves of one temperature. */
  public static final Surroundings USUAL = new Surroundings(295.15, OptionalDouble.empty());

  public Surroundings {
    if (!(room > 0) || above.orElse(1) <= 0) {
      throw new IllegalArgumentException("temperatures around a vessel must be positive");
    }
  }
}
