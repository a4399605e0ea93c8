package org.firnline.drying.icerun;

import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.matter.SublimationEnthalpy;

/**
 * K_v from ice lost: K_v = ΔH(T_i) Δm/(A_v ∫(T_shelf − T_b) dt).
 *
 * <p>Valid: while ice covers the bottom, about the first third of the ice; heat from walls is to be
 * subtracted before.
 *
 * <p>Source: Pikal, Roy &amp; Shah, J. Pharm. Sci. 73, 1224 (1984) (from memory). Uncertainty by
 * the law of propagation, JCGM 100:2008, 5.1.
 *
 * @param loss Δm, kg; best positive
 * @param drive ∫(T_shelf − T_b) dt, K s; best positive
 * @param area A_v, m2; best positive
 * @param frontTemperature T_i, K
 */
public record WeighedIceRun(Estimate loss, Estimate drive, Estimate area, double frontTemperature) {

  public WeighedIceRun {
    if (!(loss.best() > 0) || !(drive.best() > 0) || !(area.best() > 0)) {
      throw new IllegalArgumentException("ice lost, drive and area must be positive");
    }
  }

  /** K_v with its standard uncertainty, W/(m2 K). */
  public Estimate coefficient(SublimationEnthalpy enthalpy) {
    double best = enthalpy.specific(frontTemperature) * loss.best() / (area.best() * drive.best());
    double relative =
        Math.sqrt(
            squared(loss.spread() / loss.best())
                + squared(drive.spread() / drive.best())
                + squared(area.spread() / area.best()));
    return new Estimate(best, best * relative, new Provenance.Measured("weighed ice run"));
  }

  private static double squared(double value) {
    return value * value;
  }
}
