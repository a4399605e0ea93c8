package org.firnline.lab;

import java.util.Optional;

/**
 * The temperature-controlled shelves of a dryer.
 *
 * @param temperature settings they accept, K
 * @param ramp fastest change of their temperature, K/s; positive
 * @param layout how many and how large; empty if unknown
 * @param edge the heat that vessels at the walls get on top; empty if nobody has looked
 */
public record Shelves(
    Range temperature, double ramp, Optional<ShelfLayout> layout, Optional<EdgeHeat> edge) {

  public Shelves {
    Check.positive(temperature.low(), "lowest shelf temperature", "K");
    Check.positive(ramp, "shelf ramp", "K/s");
  }

  /** Shelves of unknown size, with nothing known about their walls. */
  public static Shelves of(Range temperature, double ramp) {
    return new Shelves(temperature, ramp, Optional.empty(), Optional.empty());
  }
}
