package org.firnline.drying.primary;

import java.util.function.ToDoubleFunction;
import org.firnline.matter.Water;
import org.firnline.numerics.Peak;
import org.firnline.numerics.Threshold;

/**
 * One vessel of any shape at constant settings, heat from above included: the quick form of {@link
 * PrimaryDrying} where {@link SlabKernel} does not apply. Time by the same Gauss–Kronrod pair; the
 * warmest point and the greatest rate are looked for, since nothing forbids several.
 */
final class ShapeKernel {

  /** Wanted agreement of the 7 and 15 point rules; leaves the finer one far below 1e-7. */
  private static final double AGREEMENT = 3e-6;

  private static final int MOST_HALVINGS = 24;

  private final DryingVessel vessel;
  private final HeatSupply supply;
  private final double pressure;
  private final double coldest;
  private final FrontFollower front;

  private ShapeKernel(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {
    this.vessel = vessel;
    this.supply = supply;
    this.pressure = pressure_Pa;
    this.coldest = FastFront.coldest(pressure_Pa);
    this.front = new FrontFollower(vessel);
  }

  static VialTrajectory run(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {
    return pressure_Pa > Water.TRIPLE_POINT_PRESSURE
        ? VialTrajectory.melting(VialTrajectory.Ending.ABOVE_TRIPLE_POINT)
        : new ShapeKernel(vessel, supply, pressure_Pa).run();
  }

  private VialTrajectory run() {
    if (isIdle(0)) {
      solve(0);
      return VialTrajectory.idle(front.warmest());
    }
    double thickness = vessel.geometry().thickness();
    boolean stalls = isIdle(thickness);
    double reach = stalls ? Threshold.of(this::isIdle, 0, thickness) : thickness;
    double warmest = greatest(FrontFollower::warmest, reach);
    if (warmest >= Water.TRIPLE_POINT_TEMPERATURE) {
      return VialTrajectory.melting(VialTrajectory.Ending.MELTS);
    }
    double peakRate = greatest(FrontFollower::rate, reach);
    double time = stalls ? Double.POSITIVE_INFINITY : integral(0, thickness, MOST_HALVINGS);
    return new VialTrajectory(
        stalls ? VialTrajectory.Ending.STALLS : VialTrajectory.Ending.DRIES,
        time,
        warmest,
        solve(0),
        peakRate,
        solve(reach));
  }

  private boolean isIdle(double depth_m) {
    return solve(depth_m) == 0;
  }

  private double solve(double depth_m) {
    return front.solve(supply, pressure, coldest, depth_m);
  }

  private double greatest(ToDoubleFunction<FrontFollower> quantity, double reach) {
    return Peak.of(
        depth -> {
          solve(depth);
          return quantity.applyAsDouble(front);
        },
        0,
        reach);
  }

  private double integral(double from, double to, int halvings) {
    double center = (from + to) / 2;
    double half = (to - from) / 2;
    double fine = 0;
    double coarse = 0;
    for (int point = 0; point < KronrodRule.POINTS; point++) {
      double depth = center + half * KronrodRule.abscissa(point);
      double slowness = vessel.geometry().icePerDepth(depth) / solve(depth);
      fine += KronrodRule.weight(point) * slowness;
      coarse += KronrodRule.coarseWeight(point) * slowness;
    }
    if (halvings == 0 || Math.abs(fine - coarse) <= AGREEMENT * fine) {
      return fine * half;
    }
    return integral(from, center, halvings - 1) + integral(center, to, halvings - 1);
  }
}
