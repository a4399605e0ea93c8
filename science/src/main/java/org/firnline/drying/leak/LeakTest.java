package org.firnline.drying.leak;

import org.firnline.numerics.Fit;
import org.firnline.numerics.LeastSquares;

/**
 * Leak and outgassing of an empty chamber that is shut off: P = P_0 + (Q/V) t + O (1 − e^(−t/τ)). A
 * straight line is a leak, a curve that flattens is outgassing.
 *
 * <p>Source: throughput Q = V dP/dt; derivation in docs/science.md.
 *
 * @param leak Q, Pa m3/s
 * @param outgassing O, what desorbs in the end, Pa
 * @param time τ of the outgassing, s
 * @param start P_0, Pa
 * @param separable whether the bend ends within the test; if not, leak and outgassing cannot be
 *     told apart and {@code leak} holds the whole rise of the last half
 */
public record LeakTest(
    double leak, double outgassing, double time, double start, boolean separable) {

  /**
   * Usual acceptance limit of a clean, dry, empty chamber, Pa m3/s: 2e-2 mbar L/s. Source:
   * Parenteral Society Technical Monograph 7, quoted (found).
   */
  public static final double USUAL_LIMIT = 2e-3;

  /** The bend must be this much faster than the test to be seen as one. */
  private static final double BENDS_WITHIN = 2;

  /**
   * Fits a rise.
   *
   * @param times_s rising; six or more
   * @param pressures_Pa as many
   * @param volume_m3 of the chamber; positive
   */
  public static LeakTest of(double[] times_s, double[] pressures_Pa, double volume_m3) {
    int count = times_s.length;
    if (count < 6 || pressures_Pa.length != count || !(volume_m3 > 0)) {
      throw new IllegalArgumentException(
          "a leak test needs six or more readings, each with its time, and a chamber volume");
    }
    double span = times_s[count - 1] - times_s[0];
    double rise = pressures_Pa[count - 1] - pressures_Pa[0];
    double late =
        (pressures_Pa[count - 1] - pressures_Pa[count / 2])
            / (times_s[count - 1] - times_s[count / 2]);
    double scale = Math.max(Math.abs(rise), 1e-6);
    Fit fit =
        LeastSquares.fit(
            p -> rise(times_s, p),
            pressures_Pa,
            new double[] {pressures_Pa[0], late, rise - late * span, span / 5},
            new double[] {scale, scale / span, scale, span / 5});
    boolean separable =
        fit.determined()
            && fit.value(3) > 0
            && fit.value(3) * BENDS_WITHIN < span
            && fit.value(2) > -0.01 * scale;
    return separable
        ? new LeakTest(fit.value(1) * volume_m3, fit.value(2), fit.value(3), fit.value(0), true)
        : new LeakTest(late * volume_m3, 0, Double.NaN, pressures_Pa[0], false);
  }

  private static double[] rise(double[] times_s, double[] parameters) {
    double[] pressures = new double[times_s.length];
    for (int i = 0; i < times_s.length; i++) {
      pressures[i] =
          parameters[0]
              + parameters[1] * times_s[i]
              - parameters[2] * Math.expm1(-times_s[i] / parameters[3]);
    }
    return pressures;
  }
}
