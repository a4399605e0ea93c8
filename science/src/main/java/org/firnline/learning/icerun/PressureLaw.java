package org.firnline.learning.icerun;

import java.util.List;
import java.util.Locale;
import org.firnline.lab.HeatTransfer;
import org.firnline.numerics.Fit;

/**
 * K_v(P) = a + bP/(1 + cP) through measured points.
 *
 * @param form how much of the law the points show
 * @param heatTransfer the law
 * @param deviations one standard deviation of a, b and c in W/(m2 K), W/(m2 K Pa) and 1/Pa; 0 for a
 *     part that the points do not show
 * @param chiSquare sum of squared residuals, each in its own standard deviations
 * @param lowest lowest pressure of the points, Pa
 * @param highest highest pressure of the points, Pa
 * @param fit with the covariance, for {@link #spreadAt}
 */
public record PressureLaw(
    Form form,
    HeatTransfer heatTransfer,
    List<Double> deviations,
    double chiSquare,
    double lowest,
    double highest,
    Fit fit) {

  /** How much of the law the points show. */
  public enum Form {
    /** All three constants. */
    LEVELING(3),
    /** A straight line: the points do not show that it levels off, c is 0. */
    LINE(2),
    /** No rise with pressure: b and c are 0. */
    CONSTANT(1);

    private final int constants;

    Form(int constants) {
      this.constants = constants;
    }

    /** Its name for programs and bundles, such as "leveling". */
    public String label() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** How many constants are free. */
    int constants() {
      return constants;
    }
  }

  public PressureLaw {
    deviations = List.copyOf(deviations);
  }

  /** One standard deviation of K_v at {@code pressure_Pa}, W/(m2 K), the covariance included. */
  public double spreadAt(double pressure_Pa) {
    double[] slopes = slopes(pressure_Pa);
    double variance = 0;
    for (int i = 0; i < fit.size(); i++) {
      for (int j = 0; j < fit.size(); j++) {
        variance += slopes[i] * slopes[j] * fit.covariance(i, j);
      }
    }
    return Math.sqrt(Math.max(0, variance));
  }

  private double[] slopes(double pressure_Pa) {
    double leveled = 1 + heatTransfer.leveling() * pressure_Pa;
    return new double[] {
      1,
      pressure_Pa / leveled,
      -heatTransfer.gas() * pressure_Pa * pressure_Pa / (leveled * leveled)
    };
  }
}
