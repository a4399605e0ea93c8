package org.firnline.drying.cycle;

import org.firnline.drying.dryer.VaporPath;

/**
 * The machine during a cycle.
 *
 * @param path how vapor gets onto the collector
 * @param volume of the chamber, m3; positive
 * @param pumpingSpeed at the chamber for the gas that the collector lets pass, m3/s; positive
 * @param leak air that always comes in, Pa m3/s; 0 or more
 * @param shelfRamp fastest change of the shelf, K/s; positive
 * @param collector cold temperature of the collector, K
 * @param surroundings the room and what it does to a machine without power
 * @param vaporExcess g of the thermal gauge: its reading in pure vapor over the true pressure,
 *     minus 1; 0 or more
 * @param gaugeLimit greatest reading of the capacitance gauge, Pa; positive
 * @param control whether it can let gas in to hold a set point
 * @param capacity ice its collector holds, kg; positive, infinite if unknown
 */
public record CycleDryer(
    VaporPath path,
    double volume,
    double pumpingSpeed,
    double leak,
    double shelfRamp,
    double collector,
    Surroundings surroundings,
    double vaporExcess,
    double gaugeLimit,
    Control control,
    double capacity) {

  /** What keeps the chamber pressure. */
  public enum Control {
    /** Gas is let in until the set point is met. */
    HOLDS_SET_POINT,
    /** Nothing: the pressure floats on what load, leak, pump and collector make of it. */
    FLOATS
  }

  /**
   * What the machine drifts to when nothing drives it.
   *
   * @param room K
   * @param shelfTime time constant of the shelves, s; positive
   * @param collectorTime time constant of the collector, s; positive
   */
  public record Surroundings(double room, double shelfTime, double collectorTime) {

    /** A room at 22 °C; shelves within hours, a collector within an hour (assumed). */
    public static final Surroundings USUAL = new Surroundings(295.15, 4 * 3600, 3600);
  }

  /** A dryer that holds its set point, with a collector that never fills. */
  public CycleDryer(
      VaporPath path,
      double volume,
      double pumpingSpeed,
      double leak,
      double shelfRamp,
      double collector,
      Surroundings surroundings,
      double vaporExcess,
      double gaugeLimit) {
    this(
        path,
        volume,
        pumpingSpeed,
        leak,
        shelfRamp,
        collector,
        surroundings,
        vaporExcess,
        gaugeLimit,
        Control.HOLDS_SET_POINT,
        Double.POSITIVE_INFINITY);
  }

  /** This dryer without pressure control. */
  public CycleDryer floating() {
    return new CycleDryer(
        path,
        volume,
        pumpingSpeed,
        leak,
        shelfRamp,
        collector,
        surroundings,
        vaporExcess,
        gaugeLimit,
        Control.FLOATS,
        capacity);
  }

  /** This dryer with a collector that holds {@code ice_kg}. */
  public CycleDryer holding(double ice_kg) {
    return new CycleDryer(
        path,
        volume,
        pumpingSpeed,
        leak,
        shelfRamp,
        collector,
        surroundings,
        vaporExcess,
        gaugeLimit,
        control,
        ice_kg);
  }

  public CycleDryer {
    if (!(volume > 0) || !(pumpingSpeed > 0) || !(shelfRamp > 0) || !(gaugeLimit > 0)) {
      throw new IllegalArgumentException(
          "volume, pumping speed, shelf ramp and gauge limit must be positive");
    }
    if (!(leak >= 0) || !(vaporExcess >= 0)) {
      throw new IllegalArgumentException("leak and vapor excess must be 0 or more");
    }
    if (!(capacity > 0)) {
      throw new IllegalArgumentException("collector capacity " + capacity + " kg is not positive");
    }
  }
}
