package org.firnline.drying.primary;

import org.firnline.lab.CakeResistance;
import org.firnline.matter.Water;

/**
 * One slab at constant settings in plain numbers: the hot loop behind {@link FastPrimaryDrying}.
 * {@link PrimaryDrying} is its readable form and test oracle.
 *
 * <p>Time is t = μ ∫ dℓ/ṁ(ℓ) by a Gauss–Kronrod pair; intervals on which its two rules differ are
 * halved.
 *
 * <p>Without heat from above the front only warms as it retreats, so the last ice is the warmest
 * front. The sign of dṁ/dℓ is that of p′(T_i) ΔH/k_f − dR_p/dℓ, a rising function minus a falling
 * one: the rate has no peak inside and at most one least value, where the bottom is warmest.
 */
final class SlabKernel {

  /** Wanted agreement of the 7 and 15 point rules; leaves the finer one far below 1e-7. */
  private static final double AGREEMENT = 3e-6;

  private static final int MOST_HALVINGS = 24;
  private static final int MOST_SECANTS = 40;
  private static final double DEPTH_RESOLUTION = 1e-4;

  private final Slab slab;
  private final CakeResistance cake;
  private final double mouth;
  private final double outerResistance;
  private final double source;
  private final double pressure;
  private final double coldest;

  /** Depth, temperature and slope of the last front solved: the next guess starts there. */
  private double lastDepth;

  private double lastFront;
  private double lastSlope;

  private SlabKernel(DryingVessel vessel, Slab slab, HeatSupply supply, double pressure_Pa) {
    this.slab = slab;
    this.cake = vessel.cake();
    this.mouth = vessel.mouthResistance();
    this.outerResistance = 1 / (slab.vesselArea() * supply.coefficient());
    this.source = supply.temperature();
    this.pressure = pressure_Pa;
    this.coldest = FastFront.coldest(pressure_Pa);
    this.lastFront = coldest;
  }

  /** Runs one vessel whose geometry is {@code slab}; heat from above is not looked at. */
  static VialTrajectory run(DryingVessel vessel, Slab slab, HeatSupply supply, double pressure_Pa) {
    if (pressure_Pa > Water.TRIPLE_POINT_PRESSURE) {
      return VialTrajectory.melting(VialTrajectory.Ending.ABOVE_TRIPLE_POINT);
    }
    var kernel = new SlabKernel(vessel, slab, supply, pressure_Pa);
    boolean idle = supply.coefficient() == 0 || supply.temperature() <= kernel.coldest;
    return idle ? VialTrajectory.idle(supply.temperature()) : kernel.follow();
  }

  private VialTrajectory follow() {
    double thickness = slab.thickness();
    double startFront = front(0);
    double startRate = rate(0, startFront);
    double startTurn = turn(0, startFront);
    double time = slab.icePerDepth(0) * integral(0, thickness, MOST_HALVINGS);
    double endFront = front(thickness);
    double endRate = rate(thickness, endFront);
    double warmest = Math.max(bottom(0, startFront), endFront);
    double endTurn = turn(thickness, endFront);
    if (startTurn < 0 && endTurn > 0) {
      double depth = turningDepth(startTurn, endTurn);
      warmest = Math.max(warmest, bottom(depth, front(depth)));
    }
    if (endFront >= Water.TRIPLE_POINT_TEMPERATURE || warmest > Water.TRIPLE_POINT_TEMPERATURE) {
      return VialTrajectory.melting(VialTrajectory.Ending.MELTS);
    }
    return new VialTrajectory(
        VialTrajectory.Ending.DRIES,
        time,
        warmest,
        startRate,
        Math.max(startRate, endRate),
        endRate);
  }

  private double integral(double from, double to, int halvings) {
    double center = (from + to) / 2;
    double half = (to - from) / 2;
    double fine = 0;
    double coarse = 0;
    for (int point = 0; point < KronrodRule.POINTS; point++) {
      double depth = center + half * KronrodRule.abscissa(point);
      double slowness = 1 / rate(depth, front(depth));
      fine += KronrodRule.weight(point) * slowness;
      coarse += KronrodRule.coarseWeight(point) * slowness;
    }
    if (halvings == 0 || Math.abs(fine - coarse) <= AGREEMENT * fine) {
      return fine * half;
    }
    return integral(from, center, halvings - 1) + integral(center, to, halvings - 1);
  }

  private double resistance(double depth_m) {
    return cake.at(depth_m) / slab.productArea() + mouth;
  }

  private double conductance(double depth_m) {
    return 1 / (outerResistance + slab.frozenResistance(depth_m));
  }

  private double front(double depth_m) {
    double guess = lastFront + lastSlope * (depth_m - lastDepth);
    double front =
        FastFront.temperature(
            resistance(depth_m), conductance(depth_m), source, pressure, coldest, guess);
    if (depth_m > lastDepth) {
      lastSlope = (front - lastFront) / (depth_m - lastDepth);
    }
    lastDepth = depth_m;
    lastFront = front;
    return front;
  }

  private double rate(double depth_m, double front_K) {
    return FastFront.rate(resistance(depth_m), conductance(depth_m), source, pressure, front_K);
  }

  private double bottom(double depth_m, double front_K) {
    return source - outerResistance * conductance(depth_m) * (source - front_K);
  }

  /** Has the sign of dṁ/dℓ, in Pa s/kg per m. */
  private double turn(double depth_m, double front_K) {
    IceTable ice = IceTable.shared();
    return ice.slope(front_K) * ice.specific(front_K) / slab.frozenConductivity()
        - cake.slope(depth_m);
  }

  /** Where the rate is least, by the Illinois form of the secant rule. */
  private double turningDepth(double startTurn, double endTurn) {
    double low = 0;
    double high = slab.thickness();
    double atLow = startTurn;
    double atHigh = endTurn;
    double depth = low;
    for (int secant = 0; secant < MOST_SECANTS; secant++) {
      double next = low - atLow * (high - low) / (atHigh - atLow);
      boolean settled = Math.abs(next - depth) < DEPTH_RESOLUTION * slab.thickness();
      depth = next;
      if (settled) {
        break;
      }
      double turn = turn(depth, front(depth));
      if (turn < 0) {
        low = depth;
        atLow = turn;
        atHigh /= 2;
      } else {
        high = depth;
        atHigh = turn;
        atLow /= 2;
      }
    }
    return depth;
  }
}
