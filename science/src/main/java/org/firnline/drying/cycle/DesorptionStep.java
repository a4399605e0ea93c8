package org.firnline.drying.cycle;

import org.firnline.drying.secondary.Desorption;

/**
 * One vessel without ice over a step: glass and cake follow their surroundings, the cake loses
 * water by {@link Desorption}, both exact over the step at its middle temperature. The heat that
 * desorption takes is left out.
 */
final class DesorptionStep {

  private final VesselArrays all;

  DesorptionStep(VesselArrays all) {
    this.all = all;
  }

  void advance(int i, double time_s, double step_s, double shelf_K, double pressure_Pa) {
    double before = all.bottom[i];
    follow(i, step_s, shelf_K, pressure_Pa);
    all.front[i] = all.bottom[i];
    all.rate[i] = 0;
    BoundWater water = all.vessels[i].water();
    if (water.desorption().isPresent()) {
      lose(i, water.desorption().get(), step_s, (before + all.bottom[i]) / 2);
    }
    if (water.glass().isPresent()) {
      double softens = water.glass().get().atMoisture(all.moisture[i]);
      all.records.seeGlass(i, softens - all.bottom[i], time_s + step_s);
    }
  }

  private void follow(int i, double step_s, double shelf_K, double pressure_Pa) {
    double outer = all.heat.outer(i, pressure_Pa);
    double top = all.heat.top(i, all.thickness[i]);
    if (outer + top == 0) {
      return;
    }
    double source =
        (outer * all.heat.source(i, shelf_K, pressure_Pa)
                + top * all.heat.topTemperature(i, shelf_K))
            / (outer + top);
    double decay = step_s * (outer + top) / all.glassCapacity[i];
    all.bottom[i] = source + (all.bottom[i] - source) * Math.exp(-decay);
  }

  private void lose(int i, Desorption desorption, double step_s, double middle_K) {
    double excess = all.moisture[i] - desorption.equilibrium().at(middle_K);
    if (excess <= 0) {
      return;
    }
    double slowed =
        all.vessels[i].annealing().map(how -> how.desorptionAfter(all.annealed[i])).orElse(1.0);
    double gone = slowed * desorption.rate(middle_K) * step_s;
    double lost = excess * gone * Relaxation.mean(gone);
    all.moisture[i] -= lost;
    all.rate[i] = lost * all.vessels[i].water().solids() / step_s;
  }
}
