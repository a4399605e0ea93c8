package org.firnline.drying.cycle;

import java.util.List;

/**
 * One channel of a simulated log.
 *
 * @param kind what it is
 * @param number of the watched vessel, from 0; 0 for channels that exist once
 * @param values one for each time of the log, SI; NaN while the sensor is open
 */
public record LoggedChannel(Kind kind, int number, List<Double> values) {

  /** What dryers log; the unit of the values. */
  public enum Kind {
    /** K. */
    SHELF_SET_POINT,
    /** K. */
    SHELF,
    /** Pa, true pressure. */
    CAPACITANCE_GAUGE,
    /** Pa as indicated: too much in vapor. */
    THERMAL_GAUGE,
    /** K, at the bottom of a watched vessel. */
    PRODUCT,
    /** K. */
    COLLECTOR,
    /** kg/s, of the whole load. */
    VAPOR_RATE
  }

  public LoggedChannel {
    values = List.copyOf(values);
  }
}
