package org.firnline.drying.cycle;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.sampling.Spread;
import org.firnline.numerics.SeededUniform;

/**
 * Draws vessels that differ by chance from one typical vessel: heat transfer and cake by lognormal
 * factors of median 1, fill normally about 1. The same seed draws the same vessels.
 *
 * @param spread how far they differ
 * @param seed of all that is drawn
 */
public record VesselDraw(Spread spread, long seed) {

  private static final int HEAT = 0;
  private static final int CAKE = 1;
  private static final int FILL = 2;

  /** A vessel is filled with something. */
  private static final double LEAST_FILL = 0.05;

  /**
   * One vessel for each nucleation temperature.
   *
   * @param typical what they vary about; its count is replaced by 1
   * @param nucleation_K where ice appears in each; ignored if the typical vessel comes frozen
   */
  public List<CycleVessel> about(CycleVessel typical, List<Double> nucleation_K) {
    var chance = new SeededUniform(seed);
    return IntStream.range(0, nucleation_K.size())
        .mapToObj(vessel -> varied(typical, nucleation_K.get(vessel), chance, vessel))
        .toList();
  }

  private CycleVessel varied(
      CycleVessel typical, double nucleation_K, SeededUniform chance, int vessel) {
    double heat = Math.exp(spread.heatTransfer() * chance.normalAt(vessel, HEAT, 0));
    double cake = Math.exp(spread.resistance() * chance.normalAt(vessel, CAKE, 0));
    double fill = Math.max(LEAST_FILL, 1 + spread.fill() * chance.normalAt(vessel, FILL, 0));
    return new CycleVessel(
        1,
        typical.vessel().varied(fill, cake),
        typical.heat().times(heat),
        new ThermalMass(typical.mass().vessel(), typical.mass().frozen() * fill),
        freezing(typical, nucleation_K, fill),
        typical.water().times(fill),
        typical.annealing(),
        typical.critical(),
        typical.stay());
  }

  private static Optional<CycleVessel.Freezing> freezing(
      CycleVessel typical, double nucleation_K, double fill) {
    return typical
        .freezing()
        .map(
            usual ->
                new CycleVessel.Freezing(
                    Math.min(nucleation_K, usual.freezingPoint()),
                    usual.freezingPoint(),
                    usual.liquidHeatCapacity() * fill));
  }
}
