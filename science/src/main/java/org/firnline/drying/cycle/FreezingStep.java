package org.firnline.drying.cycle;

import org.firnline.drying.freezing.FreezingMoment;
import org.firnline.drying.freezing.FreezingProgress;
import org.firnline.drying.freezing.FreezingVessel;

/**
 * The vessels that are not frozen through, over a step along a straight shelf line: each is carried
 * by the closed forms of {@link FreezingProgress}. Heat from above is counted with that from
 * outside.
 */
final class FreezingStep {

  private final VesselArrays all;
  private final FreezingProgress[] progress;
  private final double[] pressure;

  FreezingStep(VesselArrays all) {
    this.all = all;
    this.progress = new FreezingProgress[all.size];
    this.pressure = new double[all.size];
  }

  /**
   * Advances vessel {@code i}.
   *
   * @param before_K shelf at the start of the step
   * @param after_K shelf at its end
   */
  void advance(
      int i, double time_s, double step_s, double before_K, double after_K, double pressure_Pa) {
    FreezingProgress now = at(i, pressure_Pa);
    now.advance(time_s, step_s, source(i, before_K, pressure_Pa), source(i, after_K, pressure_Pa));
    all.bottom[i] = now.bottom(source(i, after_K, pressure_Pa));
    all.front[i] = all.bottom[i];
    all.rate[i] = 0;
    FreezingMoment.Stage stage = now.stage();
    if (stage != FreezingMoment.Stage.LIQUID) {
      all.records.nucleatedAt[i] = now.nucleation();
      boolean through = stage == FreezingMoment.Stage.FROZEN;
      all.stage[i] = through ? VesselArrays.FROZEN : VesselArrays.FREEZING;
    }
  }

  private double source(int i, double shelf_K, double pressure_Pa) {
    double outer = all.heat.outer(i, pressure_Pa);
    double top = all.heat.top(i, 0);
    double source = all.heat.source(i, shelf_K, pressure_Pa);
    return top == 0
        ? source
        : (outer * source + top * all.heat.topTemperature(i, shelf_K)) / (outer + top);
  }

  /** The progress so far, with the heat transfer that the pressure of the moment gives. */
  private FreezingProgress at(int i, double pressure_Pa) {
    if (progress[i] == null) {
      CycleVessel.Freezing freezing = all.vessels[i].freezing().orElseThrow();
      progress[i] =
          FreezingProgress.liquid(vessel(i, pressure_Pa), all.bottom[i], freezing.nucleation());
      pressure[i] = pressure_Pa;
    } else if (pressure[i] != pressure_Pa) {
      progress[i].continueIn(vessel(i, pressure_Pa));
      pressure[i] = pressure_Pa;
    }
    return progress[i];
  }

  private FreezingVessel vessel(int i, double pressure_Pa) {
    CycleVessel vessel = all.vessels[i];
    CycleVessel.Freezing freezing = vessel.freezing().orElseThrow();
    return FreezingVessel.of(
        vessel.vessel().geometry(),
        all.heat.outer(i, pressure_Pa) + all.heat.top(i, 0),
        all.glassCapacity[i] + freezing.liquidHeatCapacity(),
        all.glassCapacity[i] + all.frozenCapacity[i],
        freezing.freezingPoint());
  }
}
