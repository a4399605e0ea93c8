package org.firnline.drying.cycle;

import java.util.Optional;
import org.firnline.drying.secondary.SecondaryDrying;
import org.firnline.matter.Water;

/**
 * What became of one vessel.
 *
 * @param nucleatedAt when ice first formed, s; infinite if it never froze
 * @param endOfIce when its last ice went, s; infinite if ice is left
 * @param warmestIce warmest frozen point while ice sublimed, K; 0 if none did
 * @param finalMoisture kg of water per kg of solids at the end, counted from the end of ice
 * @param limitPassedAt when ice under some cake first was warmer than the vessel's critical
 *     temperature, s; infinite if it never was or nobody gave one
 * @param glassMargin least T_g(C(t)) − T of its dry cake and when; empty where its glass transition
 *     is unknown or it never was dry
 */
public record VesselFate(
    double nucleatedAt,
    double endOfIce,
    double warmestIce,
    double finalMoisture,
    double limitPassedAt,
    Optional<SecondaryDrying.GlassMargin> glassMargin) {

  /**
   * Whether some ice was warmer than ice can be: the product melted, and what the simulation says
   * of this vessel from then on is no prediction.
   */
  public boolean melted() {
    return warmestIce > Water.TRIPLE_POINT_TEMPERATURE;
  }

  /** Whether its dry cake was warmer than its glass transition at some time. */
  public boolean softened() {
    return glassMargin.filter(least -> least.margin() < 0).isPresent();
  }

  /**
   * Time from an incident until the limit was passed, s: how long there is to act. Infinite if the
   * limit held.
   */
  public double warmUpTime(Incident incident) {
    return limitPassedAt - incident.start();
  }

  static VesselFate of(VesselArrays all, int i) {
    VesselRecords seen = all.records;
    boolean looked = seen.glassMarginAt[i] < Double.POSITIVE_INFINITY;
    return new VesselFate(
        seen.nucleatedAt[i],
        seen.endOfIce[i],
        seen.warmestIce[i],
        all.moisture[i],
        seen.limitPassedAt[i],
        looked
            ? Optional.of(
                new SecondaryDrying.GlassMargin(seen.glassMargin[i], seen.glassMarginAt[i]))
            : Optional.empty());
  }
}
