package org.firnline.learning.icerun;

import org.firnline.evidence.Estimate;

/**
 * A heat-transfer coefficient measured at one pressure.
 *
 * @param pressure Pa; positive
 * @param heatTransfer W/(m2 K); best and spread positive
 */
public record PressurePoint(double pressure, Estimate heatTransfer) {

  public PressurePoint {
    if (!(pressure > 0) || !(heatTransfer.best() > 0) || !(heatTransfer.spread() > 0)) {
      throw new IllegalArgumentException(
          "K_v of "
              + heatTransfer.best()
              + " ± "
              + heatTransfer.spread()
              + " W/(m2 K) at "
              + pressure
              + " Pa: all must be positive");
    }
  }
}
