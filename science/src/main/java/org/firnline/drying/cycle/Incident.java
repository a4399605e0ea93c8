package org.firnline.drying.cycle;

/**
 * Something that goes wrong for a while.
 *
 * @param kind what
 * @param start s
 * @param end s; after {@code start}
 * @param size how much, in the unit of the kind; 0 or more
 */
public record Incident(Kind kind, double start, double end, double size) {

  /** What can go wrong; the unit of its size. */
  public enum Kind {
    /** No power at all: shelves and collector drift, the pump stands. Size unused. */
    POWER_CUT,
    /** The pump stands, the collector stays cold. Size unused. */
    PUMP_STOP,
    /** The collector's cooling stops. Size unused. */
    COLLECTOR_STOP,
    /** More air comes in; size in Pa m3/s. */
    LEAK,
    /** A port or valve stands open; size in Pa m3/s, large. */
    PORT_OPENED,
    /** The shelf runs above its set point; size in K. */
    SHELF_OVERSHOOT
  }

  public Incident {
    if (!(start < end) || !(size >= 0)) {
      throw new IllegalArgumentException(
          kind + " from " + start + " s to " + end + " s of size " + size + " cannot be");
    }
  }

  boolean isOn(double time_s) {
    return time_s >= start && time_s < end;
  }
}
