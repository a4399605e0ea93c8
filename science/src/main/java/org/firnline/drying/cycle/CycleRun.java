package org.firnline.drying.cycle;

import java.util.List;

/**
 * A simulated cycle and the truth about it.
 *
 * @param schedule what the dryer was told
 * @param moments from step to step, in time
 * @param fates what became of each vessel, in their order
 * @param vacuumReached when the chamber first was at its set point, s; infinite if never
 * @param massError ice at the start less ice left and vapor given off, over ice at the start
 * @param energyError heat that came into subliming vessels less heat sublimed and stored, over heat
 *     sublimed
 */
public record CycleRun(
    CycleSchedule schedule,
    List<CycleMoment> moments,
    List<VesselFate> fates,
    double vacuumReached,
    double massError,
    double energyError) {

  public CycleRun {
    moments = List.copyOf(moments);
    fates = List.copyOf(fates);
  }

  /** When the last ice of the load went, s; infinite if ice is left. */
  public double lastEndOfIce() {
    return fates.stream().mapToDouble(VesselFate::endOfIce).max().orElse(0);
  }
}
