package org.firnline.drying.primary;

import org.firnline.matter.Water;

/**
 * The front of one vessel, solved again and again: each answer is where the next search starts.
 *
 * <p>Gives what {@link QuasiSteadyFront} gives, with the ice of {@link IceTable}. One follower
 * belongs to one thread.
 */
public final class FrontFollower {

  private final DryingVessel vessel;
  private double front = 240;
  private double bottom = 240;
  private double rate;

  public FrontFollower(DryingVessel vessel) {
    this.vessel = vessel;
  }

  /**
   * Solves the balance.
   *
   * @param pressure_Pa chamber pressure, up to the triple point
   * @param coldest_K {@link FastFront#coldest} of that pressure
   * @param depth_m dried depth; beyond the thickness it is taken as the thickness
   * @return vapor rate, kg/s; 0 where nothing sublimes
   */
  public double solve(HeatSupply supply, double pressure_Pa, double coldest_K, double depth_m) {
    FrontGeometry geometry = vessel.geometry();
    double depth = Math.max(0, Math.min(depth_m, geometry.thickness()));
    double below = geometry.outerConductance(supply.coefficient(), depth);
    double above = supply.above().conductance(geometry.surfaceArea(), depth);
    double source = mean(supply, below, above);
    if (source <= coldest_K || below + above == 0) {
      front = source;
      bottom = source;
      rate = 0;
      return 0;
    }
    double resistance = vessel.vaporResistance(depth);
    double conductance = below + above;
    front = FastFront.temperature(resistance, conductance, source, pressure_Pa, coldest_K, front);
    rate = FastFront.rate(resistance, conductance, source, pressure_Pa, front);
    double fromBelow = below * (supply.temperature() - front);
    bottom =
        Double.isInfinite(below)
            ? supply.temperature()
            : front + fromBelow * geometry.frozenResistance(depth);
    return rate;
  }

  private static double mean(HeatSupply supply, double below, double above) {
    if (above == 0 || Double.isInfinite(below)) {
      return supply.temperature();
    }
    return (below * supply.temperature() + above * supply.above().temperature()) / (below + above);
  }

  /** The vessel followed. */
  public DryingVessel vessel() {
    return vessel;
  }

  /** Vapor rate of the last answer, kg/s. */
  public double rate() {
    return rate;
  }

  /** Warmest frozen point of the last answer, K. */
  public double warmest() {
    return Math.max(front, bottom);
  }

  /** Whether some frozen point of the last answer would be warmer than ice can be. */
  public boolean melts() {
    return rate > 0
        && (warmest() > Water.TRIPLE_POINT_TEMPERATURE || front >= Water.TRIPLE_POINT_TEMPERATURE);
  }

  /** The last answer as a value. */
  public FrontState state(double depth_m) {
    return new FrontState(depth_m, front, bottom, rate);
  }
}
