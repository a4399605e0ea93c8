package org.firnline.learning.icerun;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.lab.HeatTransfer;
import org.firnline.numerics.Fit;
import org.firnline.numerics.LeastSquares;

/**
 * Finds K_v(P) = a + bP/(1 + cP) from ice runs at three pressures or more, each point weighted by
 * its own uncertainty. Where the points show no leveling or no rise, the law is cut back to a line
 * or a constant and says so, rather than given a negative constant.
 *
 * <p>Assumes that the errors of the points are independent. Runs that share a thermometer or a
 * balance have errors in common; these move a mostly and do not show in the misfit.
 *
 * <p>Source: form of Pikal, Roy &amp; Shah, J. Pharm. Sci. 73, 1224 (1984) (from memory).
 */
public final class PressureLawFit {

  private static final int LEAST_PRESSURES = 3;
  private static final double[] SIZES = {10, 1, 0.03};

  private PressureLawFit() {}

  /**
   * The law through {@code points}.
   *
   * @return empty with fewer than three different pressures
   */
  public static Optional<PressureLaw> through(List<PressurePoint> points) {
    long pressures = points.stream().mapToDouble(PressurePoint::pressure).distinct().count();
    if (pressures < LEAST_PRESSURES) {
      return Optional.empty();
    }
    for (PressureLaw.Form form : PressureLaw.Form.values()) {
      Fit fit = fit(points, form);
      boolean negative = false;
      for (int i = 0; i < fit.size(); i++) {
        negative |= fit.value(i) < 0;
      }
      if (fit.determined() && !negative) {
        return Optional.of(law(points, form, fit));
      }
    }
    throw new IllegalStateException("a constant fits any positive points");
  }

  private static Fit fit(List<PressurePoint> points, PressureLaw.Form form) {
    double[] observed =
        points.stream()
            .mapToDouble(point -> point.heatTransfer().best() / point.heatTransfer().spread())
            .toArray();
    int free = form.constants();
    double[] start = new double[free];
    double[] sizes = new double[free];
    double[] guess = {points.get(0).heatTransfer().best() / 2, 1, 0.03};
    for (int i = 0; i < free; i++) {
      start[i] = guess[i];
      sizes[i] = SIZES[i];
    }
    return LeastSquares.fit(values -> predicted(points, values), observed, start, sizes)
        .withKnownDeviations();
  }

  private static double[] predicted(List<PressurePoint> points, double[] values) {
    double gas = values.length > 1 ? values[1] : 0;
    double leveling = values.length > 2 ? values[2] : 0;
    return points.stream()
        .mapToDouble(
            point ->
                (values[0] + gas * point.pressure() / (1 + leveling * point.pressure()))
                    / point.heatTransfer().spread())
        .toArray();
  }

  private static PressureLaw law(List<PressurePoint> points, PressureLaw.Form form, Fit fit) {
    double gas = fit.size() > 1 ? fit.value(1) : 0;
    double leveling = fit.size() > 2 ? fit.value(2) : 0;
    List<Double> deviations = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      deviations.add(i < fit.size() ? fit.standardError(i) : 0.0);
    }
    return new PressureLaw(
        form,
        new HeatTransfer(fit.value(0), gas, leveling),
        deviations,
        fit.sumOfSquares(),
        points.stream().mapToDouble(PressurePoint::pressure).min().orElseThrow(),
        points.stream().mapToDouble(PressurePoint::pressure).max().orElseThrow(),
        fit);
  }
}
