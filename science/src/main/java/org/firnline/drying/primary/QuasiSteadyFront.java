package org.firnline.drying.primary;

import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.SublimationEnthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;
import org.firnline.numerics.Root;

/**
 * Temperature of the ice front at which the heat that arrives equals the heat that the vapor takes.
 *
 * <p>R̂ Q(T) = ΔH(T) (p_ice(T) − P_c), with R̂ the resistance to vapor, Q the heat flow to the
 * front and P_c the total chamber pressure (the trade's convention). The product form also holds
 * for bare ice, R̂ = 0.
 *
 * <p>Assumes a front without heat capacity, no sensible heat of the vapor and no desorption.
 *
 * <p>Valid: fronts between the ice temperature at the chamber pressure and the triple point. Where
 * the balance is still positive at the triple point the front melts, which is an answer.
 *
 * <p>Source: Pikal, J. Parenter. Sci. Technol. 39, 115 (1985) (from memory); derivation in
 * docs/science.md.
 */
public final class QuasiSteadyFront {

  /** Warmest front that is still ice, K. */
  static final double WARMEST_ICE = Water.TRIPLE_POINT_TEMPERATURE;

  private final IceVaporPressure ice;
  private final SublimationEnthalpy enthalpy;

  /** With the equations of reference for ice. */
  public QuasiSteadyFront() {
    this(new WagnerEtAl2011Ice(), new MurphyKoop2005Enthalpy());
  }

  /** With other equations, for instance those of a published example. */
  public QuasiSteadyFront(IceVaporPressure ice, SublimationEnthalpy enthalpy) {
    this.ice = ice;
    this.enthalpy = enthalpy;
  }

  /** The coldest front possible at {@code pressure_Pa}: ice in equilibrium with the chamber, K. */
  public double coldest(double pressure_Pa) {
    return ice.saturationTemperature(pressure_Pa);
  }

  /**
   * Temperature at which the vessel would settle without sublimation, K: conductance-weighted mean
   * of the sources; 0 for a vessel that no heat reaches.
   */
  public double effectiveSource(DryingVessel vessel, HeatSupply supply, double depth_m) {
    double below = below(vessel, supply, depth_m);
    double above = above(vessel, supply, depth_m);
    if (below + above == 0) {
      return 0;
    }
    if (Double.isInfinite(below)) {
      return supply.temperature();
    }
    return (below * supply.temperature() + above * supply.above().temperature()) / (below + above);
  }

  /** Whether the front at {@code depth_m} would be warmer than ice can be. */
  public boolean melts(DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m) {
    return effectiveSource(vessel, supply, depth_m) > WARMEST_ICE
        && excessHeat(vessel, supply, pressure_Pa, depth_m, WARMEST_ICE) > 0;
  }

  /** Whether the sources are too cold for ice to sublime into the chamber. */
  public boolean idles(DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m) {
    return effectiveSource(vessel, supply, depth_m) <= coldest(pressure_Pa);
  }

  /**
   * The balance at {@code depth_m}.
   *
   * @param pressure_Pa chamber pressure, above 0 to the triple-point pressure
   * @return a state with rate 0 at the source temperature where nothing sublimes, and one at the
   *     triple point where the front melts
   */
  public FrontState at(DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m) {
    double source = effectiveSource(vessel, supply, depth_m);
    double coldest = coldest(pressure_Pa);
    if (source <= coldest) {
      double settled = settled(source, coldest);
      return new FrontState(depth_m, settled, settled, 0);
    }
    if (Double.isInfinite(below(vessel, supply, depth_m))) {
      return inPerfectContact(vessel, pressure_Pa, depth_m, source);
    }
    double front =
        melts(vessel, supply, pressure_Pa, depth_m)
            ? WARMEST_ICE
            : balance(vessel, supply, pressure_Pa, depth_m, Math.min(source, WARMEST_ICE));
    double fromBelow = below(vessel, supply, depth_m) * (supply.temperature() - front);
    double bottom = front + fromBelow * vessel.geometry().frozenResistance(depth_m);
    return new FrontState(
        depth_m, front, bottom, rate(vessel, supply, pressure_Pa, depth_m, front));
  }

  /** Without any heat the ice cools itself to where it meets the chamber. */
  static double settled(double source_K, double coldest_K) {
    return source_K == 0 ? coldest_K : source_K;
  }

  /** Nothing between source and front: the front is as warm as the source, whatever sublimes. */
  private FrontState inPerfectContact(
      DryingVessel vessel, double pressure_Pa, double depth_m, double source_K) {
    double front = Math.min(source_K, WARMEST_ICE);
    double rate = (ice.pressure(front) - pressure_Pa) / vessel.vaporResistance(depth_m);
    return new FrontState(depth_m, front, source_K, rate);
  }

  /**
   * Bare ice, without any resistance, stays at the coldest front, and a front behind a nearly
   * perfect conductor at its source; rounding must not hide either.
   */
  private double balance(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m, double warmest) {
    double coldest = coldest(pressure_Pa);
    if (excessHeat(vessel, supply, pressure_Pa, depth_m, coldest) <= 0) {
      return coldest;
    }
    if (excessHeat(vessel, supply, pressure_Pa, depth_m, warmest) >= 0) {
      return warmest;
    }
    return Root.find(
        temperature -> excessHeat(vessel, supply, pressure_Pa, depth_m, temperature),
        coldest,
        warmest);
  }

  private double below(DryingVessel vessel, HeatSupply supply, double depth_m) {
    return vessel.geometry().outerConductance(supply.coefficient(), depth_m);
  }

  private double above(DryingVessel vessel, HeatSupply supply, double depth_m) {
    return supply.above().conductance(vessel.geometry().surfaceArea(), depth_m);
  }

  private double heat(DryingVessel vessel, HeatSupply supply, double depth_m, double front_K) {
    return below(vessel, supply, depth_m) * (supply.temperature() - front_K)
        + above(vessel, supply, depth_m) * (supply.above().temperature() - front_K);
  }

  private double excessHeat(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m, double front_K) {
    double drive = ice.pressure(front_K) - pressure_Pa;
    return vessel.vaporResistance(depth_m) * heat(vessel, supply, depth_m, front_K)
        - enthalpy.specific(front_K) * drive;
  }

  /**
   * The same rate follows from heat and from vapor; the one that loses fewer digits to cancellation
   * is taken.
   */
  private double rate(
      DryingVessel vessel, HeatSupply supply, double pressure_Pa, double depth_m, double front_K) {
    double resistance = vessel.vaporResistance(depth_m);
    double heat = heat(vessel, supply, depth_m, front_K);
    double byHeat = heat / enthalpy.specific(front_K);
    double equilibrium = ice.pressure(front_K);
    double drive = equilibrium - pressure_Pa;
    double source = effectiveSource(vessel, supply, depth_m);
    double lostByHeat = source / Math.max(source - front_K, Double.MIN_NORMAL);
    double lostByVapor =
        front_K * ice.logarithmicSlope(front_K) * equilibrium / Math.max(drive, Double.MIN_NORMAL);
    boolean vaporIsBetter = resistance > 0 && lostByVapor < lostByHeat;
    return Math.max(0, vaporIsBetter ? drive / resistance : byHeat);
  }
}
