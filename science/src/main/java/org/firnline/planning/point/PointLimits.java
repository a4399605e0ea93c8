package org.firnline.planning.point;

import org.firnline.drying.dryer.VaporPath;
import org.firnline.lab.Range;

/**
 * What settings must respect.
 *
 * @param warmest greatest temperature any frozen point may have, K
 * @param shelf settings the shelves accept, K
 * @param pressure settings the pressure control accepts, Pa
 * @param path what the dryer carries
 */
public record PointLimits(double warmest, Range shelf, Range pressure, VaporPath path) {

  public PointLimits {
    if (!(pressure.low() > 0)) {
      throw new IllegalArgumentException(
          "lowest pressure " + pressure.low() + " Pa is not positive");
    }
  }
}
