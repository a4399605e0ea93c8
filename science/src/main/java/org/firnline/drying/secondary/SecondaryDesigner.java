package org.firnline.drying.secondary;

import java.util.OptionalDouble;
import org.firnline.matter.solute.GordonTaylor1952;
import org.firnline.numerics.Threshold;

/**
 * Finds the fastest ramp that keeps the wettest solid below its glass transition, and the hold
 * after which the slowest solid is dry enough.
 *
 * <p>A slower ramp leaves less water at every temperature, so the margin can only grow with its
 * length, and halving finds the shortest ramp that keeps it.
 */
public final class SecondaryDesigner {

  /**
   * The program for a load.
   *
   * @param wettest the solid that softens first
   * @param slowest the solid that dries last
   * @param glass of the solid
   */
  public SecondaryDesign design(
      SecondaryDemand demand, MoistSolid wettest, MoistSolid slowest, GordonTaylor1952 glass) {
    WarmingProgram slow = demand.with(demand.slowestRamp());
    SecondaryDrying.GlassMargin best = margin(wettest, slow, glass);
    if (best.margin() < demand.margin()) {
      return new SecondaryDesign.TooSoft(best);
    }
    WarmingProgram program = fastest(demand, wettest, glass);
    OptionalDouble dry = slowest.along(program.track()).timeTo(demand.target());
    if (dry.isEmpty()) {
      return new SecondaryDesign.TargetUnreachable(
          slowest.desorption().equilibrium().at(demand.hold()));
    }
    double hold = Math.max(0, dry.getAsDouble() - program.rampTime());
    return new SecondaryDesign.Found(program, hold, margin(wettest, program, glass));
  }

  private static WarmingProgram fastest(
      SecondaryDemand demand, MoistSolid wettest, GordonTaylor1952 glass) {
    WarmingProgram fast = demand.with(demand.fastestRamp());
    if (margin(wettest, fast, glass).margin() >= demand.margin()) {
      return fast;
    }
    double way = Math.abs(demand.hold() - demand.start());
    double length =
        Threshold.of(
            time -> margin(wettest, demand.with(way / time), glass).margin() >= demand.margin(),
            fast.rampTime(),
            way / demand.slowestRamp());
    return demand.with(way / length);
  }

  /** During the hold the margin only grows. */
  private static SecondaryDrying.GlassMargin margin(
      MoistSolid solid, WarmingProgram program, GordonTaylor1952 glass) {
    return solid.along(program.track()).leastMargin(glass, program.rampTime());
  }
}
