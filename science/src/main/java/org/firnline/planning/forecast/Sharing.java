package org.firnline.planning.forecast;

import java.util.Optional;
import org.firnline.lab.Dryer;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Load;
import org.firnline.lab.Shelves;
import org.firnline.planning.VesselVariation;

/**
 * A load on a dryer, and how its vessels differ: what every forecast starts from.
 *
 * @param load everything that dries together
 * @param dryer on which machine
 * @param variation how vessels of one item differ from each other
 * @param room_K temperature of the room, which warms flasks; positive
 */
public record Sharing(Load load, Dryer dryer, VesselVariation variation, double room_K) {

  /** A room at 22 °C. */
  public static final double USUAL_ROOM_K = 295.15;

  public Sharing {
    if (!(room_K > 0)) {
      throw new IllegalArgumentException("room temperature " + room_K + " K is not positive");
    }
  }

  /** With the usual differences between vessels and a room at 22 °C. */
  public Sharing(Load load, Dryer dryer) {
    this(load, dryer, VesselVariation.USUAL, USUAL_ROOM_K);
  }

  /** This machine and variation with another load. */
  public Sharing with(Load other) {
    return new Sharing(other, dryer, variation, room_K);
  }

  Optional<EdgeHeat> knownEdge() {
    return dryer.shelves().flatMap(Shelves::edge);
  }
}
