package org.firnline.drying.cycle;

/**
 * One vessel between filling and solid, over a step at a constant shelf.
 *
 * <p>Liquid: one temperature, Newton's cooling. Nucleation: the liquid jumps to its freezing point
 * and the heat of that share of ice warms it. Freezing: a front rises from the bottom, one-sided
 * Plank, exact over the step: φ/K + φ²L/(2k) grows by A ΔT Δt/E.
 *
 * <p>Left out: the profile in the frozen part stores no heat of its own.
 */
final class FreezingStep {

  private FreezingStep() {}

  static void advance(
      VesselArrays all, int i, double time_s, double step_s, double source_K, double pressure_Pa) {
    if (all.stage[i] == VesselArrays.LIQUID) {
      cool(all, i, time_s, step_s, source_K, pressure_Pa);
    } else {
      freeze(all, i, step_s, source_K, pressure_Pa);
    }
    all.front[i] = all.bottom[i];
    all.rate[i] = 0;
  }

  private static void cool(
      VesselArrays all, int i, double time_s, double step_s, double source_K, double pressure_Pa) {
    CycleVessel.Freezing freezing = all.freezing[i];
    double capacity = all.glassCapacity[i] + freezing.liquidHeatCapacity();
    double decay = Math.exp(-step_s * all.outerConductance(i, pressure_Pa) / capacity);
    all.bottom[i] = source_K + (all.bottom[i] - source_K) * decay;
    if (all.bottom[i] <= freezing.nucleation()) {
      double warmed = freezing.freezingPoint() - all.bottom[i];
      all.frozenShare[i] =
          Math.min(1, freezing.liquidHeatCapacity() * warmed / all.heatOfFreezing(i));
      all.bottom[i] = freezing.freezingPoint();
      all.nucleatedAt[i] = time_s + step_s;
      all.stage[i] = VesselArrays.FREEZING;
    }
  }

  private static void freeze(
      VesselArrays all, int i, double step_s, double source_K, double pressure_Pa) {
    double drive = all.freezing[i].freezingPoint() - source_K;
    double conductance = all.outerConductance(i, pressure_Pa);
    double layer = all.thickness[i] / (all.conductivity[i] * all.productArea[i]);
    double share = all.frozenShare[i];
    if (drive > 0) {
      double progress =
          share / conductance + share * share * layer / 2 + drive * step_s / all.heatOfFreezing(i);
      double outer = 1 / conductance;
      share = (Math.sqrt(outer * outer + 2 * layer * progress) - outer) / layer;
      all.frozenShare[i] = Math.min(1, share);
    }
    double heat = drive / (1 / conductance + all.frozenShare[i] * layer);
    all.bottom[i] = source_K + heat / conductance;
    if (all.frozenShare[i] >= 1) {
      all.stage[i] = VesselArrays.FROZEN;
    }
  }
}
