package org.firnline.drying.cycle;

import org.firnline.matter.Water;

/**
 * What became of one vessel.
 *
 * @param nucleatedAt when ice first formed, s; infinite if it never froze
 * @param endOfIce when its last ice went, s; infinite if ice is left
 * @param warmestIce warmest frozen point while ice sublimed, K; 0 if none did
 * @param finalMoisture kg of water per kg of solids at the end, counted from the end of ice
 */
public record VesselFate(
    double nucleatedAt, double endOfIce, double warmestIce, double finalMoisture) {

  /**
   * Whether some ice was warmer than ice can be: the product melted, and what the simulation says
   * of this vessel from then on is no prediction.
   */
  public boolean melted() {
    return warmestIce > Water.TRIPLE_POINT_TEMPERATURE;
  }
}
