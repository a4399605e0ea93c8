package org.firnline.drying.cycle;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.secondary.SecondaryDrying;

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
 * @param collector what ended on the collector
 */
public record CycleRun(
    CycleSchedule schedule,
    List<CycleMoment> moments,
    List<VesselFate> fates,
    double vacuumReached,
    double massError,
    double energyError,
    CollectorTally collector) {

  public CycleRun {
    moments = List.copyOf(moments);
    fates = List.copyOf(fates);
  }

  /** The least distance of any dry cake from its glass transition; empty where none is known. */
  public Optional<SecondaryDrying.GlassMargin> leastGlassMargin() {
    return fates.stream()
        .flatMap(fate -> fate.glassMargin().stream())
        .min(Comparator.comparingDouble(SecondaryDrying.GlassMargin::margin));
  }

  /** When the last ice of the load went, s; infinite if ice is left. */
  public double lastEndOfIce() {
    return fates.stream().mapToDouble(VesselFate::endOfIce).max().orElse(0);
  }
}
