package org.firnline.planning;

import org.firnline.matter.Water;

/**
 * One shelf temperature and one chamber pressure, kept through primary drying.
 *
 * @param shelf_K shelf temperature
 * @param pressure_Pa total chamber pressure; positive
 */
public record Hold(double shelf_K, double pressure_Pa) {

  public Hold {
    if (!(shelf_K > 0)) {
      throw new IllegalArgumentException("shelf temperature " + shelf_K + " K is not positive");
    }
    if (!(pressure_Pa > 0)) {
      throw new IllegalArgumentException("chamber pressure " + pressure_Pa + " Pa is not positive");
    }
  }

  /** Whether ice can sublime at this pressure at all. */
  public boolean belowTriplePoint() {
    return pressure_Pa < Water.TRIPLE_POINT_PRESSURE;
  }
}
