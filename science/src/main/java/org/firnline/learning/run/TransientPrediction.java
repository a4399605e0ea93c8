package org.firnline.learning.run;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.lab.CakeResistance;

/** What a probed vessel should show for given parameters. */
final class TransientPrediction {

  private final ProbedVessel vessel;
  private final RunPriors priors;
  private final FixedStepDrying drying;

  TransientPrediction(ProbedVessel vessel, RunPriors priors) {
    this.vessel = vessel;
    this.priors = priors;
    this.drying = new FixedStepDrying(vessel);
  }

  /**
   * What the thermometer reads at the readings, K, then the end of ice, s.
   *
   * @param values one for each {@link Parameter}, in their order, the heat transfer as a factor
   */
  double[] of(double... values) {
    CakeResistance cake = new CakeResistance(values[1], values[2], values[3]);
    double[] seen =
        drying.run(
            new DryingVessel(vessel.slab(), cake, 0),
            ShelfHeat.of(priors.transfer().times(values[0])));
    for (int i = 0; i < seen.length - 1; i++) {
      seen[i] += values[4];
    }
    return seen;
  }
}
