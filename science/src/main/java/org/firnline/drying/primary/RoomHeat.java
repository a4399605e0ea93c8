package org.firnline.drying.primary;

/**
 * Heat from the room onto a flask, whatever shelf and pressure are.
 *
 * @param coefficient h on the outer surface, frost included, W/(m2 K); 0 or more
 * @param temperature of the room, K; positive
 */
public record RoomHeat(double coefficient, double temperature) implements HeatSource {

  public RoomHeat {
    if (!(coefficient >= 0)) {
      throw new IllegalArgumentException("room coefficient " + coefficient + " is negative");
    }
    Positive.require(temperature, "room temperature");
  }

  @Override
  public HeatSupply at(double shelf_K, double pressure_Pa) {
    return new HeatSupply(coefficient, temperature, HeatSupply.Above.NONE);
  }

  @Override
  public RoomHeat times(double factor) {
    return new RoomHeat(coefficient * factor, temperature);
  }
}
