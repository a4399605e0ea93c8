package org.firnline.drying.cycle;

import org.firnline.matter.Water;

/**
 * One vessel without ice over a step: glass and cake follow the shelf, the cake loses water at
 * first order, both exact over the step at its middle temperature. The heat that desorption takes
 * is left out.
 */
final class DesorptionStep {

  private DesorptionStep() {}

  static void advance(VesselArrays all, int i, double step_s, double source_K, double conductance) {
    double before = all.bottom[i];
    double time = all.glassCapacity[i] / conductance;
    all.bottom[i] = source_K + (before - source_K) * Math.exp(-step_s / time);
    all.front[i] = all.bottom[i];
    CycleVessel.Desorption cake = all.desorption[i];
    double excess = all.moisture[i] - cake.equilibrium();
    if (excess <= 0 || cake.rateConstant() == 0) {
      all.rate[i] = 0;
      return;
    }
    double middle = (before + all.bottom[i]) / 2;
    double constant =
        cake.rateConstant() * Math.exp(-cake.activation() / (Water.GAS_CONSTANT * middle));
    double lost = excess * constant * step_s * Relaxation.mean(constant * step_s);
    all.moisture[i] -= lost;
    all.rate[i] = lost * cake.solids() / step_s;
  }
}
