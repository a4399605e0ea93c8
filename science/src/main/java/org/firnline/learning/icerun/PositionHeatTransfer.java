package org.firnline.learning.icerun;

import java.util.List;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.learning.uncertainty.Budget;

/**
 * Heat transfer of the vessels of one position class, as one ice run tells it.
 *
 * @param position the class
 * @param budget the class's mean K_v on the outer bottom area, W/(m2 K), and what adds to its doubt
 * @param betweenVessels relative standard deviation of K_v from vessel to vessel, weighing noise
 *     taken off; 0 where it does not show, NaN for a single vessel
 * @param vessels each vessel's own K_v
 */
public record PositionHeatTransfer(
    String position, Budget budget, double betweenVessels, List<OfVessel> vessels) {

  /**
   * One vessel.
   *
   * @param vessel the weighing
   * @param heatTransfer its K_v, W/(m2 K)
   */
  public record OfVessel(WeighedVessel vessel, double heatTransfer) {}

  public PositionHeatTransfer {
    vessels = List.copyOf(vessels);
  }

  /** The class's mean as an estimate. */
  public Estimate estimate(String run) {
    return new Estimate(
        budget.value(),
        budget.uncertainty(),
        new Provenance.Measured("weighed ice run " + run + ", " + position));
  }
}
