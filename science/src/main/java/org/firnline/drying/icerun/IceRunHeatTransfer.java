package org.firnline.drying.icerun;

import java.util.ArrayList;
import java.util.List;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Problem;
import org.firnline.evidence.Provenance;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.SublimationEnthalpy;

/**
 * Heat-transfer coefficient from the record of an ice run, as {@link WeighedIceRun} has it, with
 * the heat of a wall taken off: K_v = (ΔH(T_i) Δm − Q_wall)/(A_v ∫ (T_shelf − T_b) dt), with Q_wall
 * = K_side A_v ∫ (T_wall − T_b) dt.
 *
 * <p>Assumes that all heat goes into vapor: ice and glass neither warm nor cool over the run, which
 * holds once the first minutes are small against its length.
 *
 * <p>Valid: while ice covers the base, about the first third of it; after that the base runs dry
 * from its edge and K_v comes out too low.
 *
 * <p>The spread combines weighing, a common error of the temperatures, the area and the wall, taken
 * as independent.
 *
 * <p>Source: gravimetric method of Pikal, Roy &amp; Shah, J. Pharm. Sci. 73, 1224 (1984) (from
 * memory).
 */
public final class IceRunHeatTransfer {

  /** Until this share of the ice is gone it covers the base; common practice. */
  private static final double COVERED_SHARE = 1.0 / 3;

  private static final double LEAST_DRIVE_K = 5;

  private static final Provenance MEASURED = new Provenance.Measured("weighed ice run");

  private final SublimationEnthalpy enthalpy;

  /** With the enthalpy of reference. */
  public IceRunHeatTransfer() {
    this(new MurphyKoop2005Enthalpy());
  }

  public IceRunHeatTransfer(SublimationEnthalpy enthalpy) {
    this.enthalpy = enthalpy;
  }

  /**
   * The coefficient of one run.
   *
   * @throws IllegalArgumentException if the shelf was not warmer than the ice
   */
  public IceRunResult evaluate(IceRunRecord run) {
    double drive = run.drive();
    if (!(drive > 0)) {
      throw new IllegalArgumentException("the shelf of an ice run must be warmer than the ice");
    }
    double wall = run.wall().map(side -> wallHeat(run, side.coefficient().best())).orElse(0.0);
    double wallDoubt =
        run.wall().map(side -> wallHeat(run, side.coefficient().spread())).orElse(0.0);
    Estimate alone =
        new WeighedIceRun(
                run.loss(),
                new Estimate(drive, run.temperatureDoubt() * run.length(), MEASURED),
                run.vesselArea(),
                run.frontTemperature())
            .coefficient(enthalpy);
    double best = alone.best() - wall / drive;
    double spread = Math.hypot(alone.spread(), wallDoubt / drive);
    return new IceRunResult(
        new Estimate(best, spread, new Provenance.Measured("weighed ice run " + run.name())),
        drive / run.length(),
        warnings(run, drive / run.length(), best));
  }

  /** Heat from the wall on the vessel area with that coefficient, J/m2. */
  private static double wallHeat(IceRunRecord run, double coefficient) {
    return run.wall().map(side -> coefficient * run.drive(side.wallTemperature())).orElse(0.0);
  }

  private static List<Problem> warnings(IceRunRecord run, double meanDrive, double best) {
    List<Problem> warnings = new ArrayList<>();
    if (run.driedShare() > COVERED_SHARE) {
      warnings.add(
          new Problem(
              "base-may-be-bare",
              Math.round(100 * run.driedShare()) + " % of the ice is gone",
              "ice run " + run.name(),
              "ice covers the base for about the first third only",
              "stop the next run earlier; this coefficient may be too low"));
    }
    if (meanDrive < LEAST_DRIVE_K) {
      warnings.add(
          new Problem(
              "small-drive",
              "the shelf was warmer than the ice by a few kelvin only",
              "ice run " + run.name(),
              "an error of the thermometers counts heavily",
              "use a warmer shelf"));
    }
    if (!(best > 0)) {
      warnings.add(
          new Problem(
              "no-shelf-heat",
              "the wall explains more heat than was used",
              "ice run " + run.name(),
              "a coefficient must be positive",
              "check the wall's coefficient and temperature"));
    }
    return warnings;
  }
}
