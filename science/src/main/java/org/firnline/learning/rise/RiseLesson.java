package org.firnline.learning.rise;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firnline.drying.PressureSample;
import org.firnline.drying.pressurerise.IsothermalRise;
import org.firnline.drying.pressurerise.RiseEstimate;
import org.firnline.drying.pressurerise.RiseEvaluation;
import org.firnline.drying.pressurerise.RiseSetup;
import org.firnline.evidence.Estimate;
import org.firnline.matter.WagnerEtAl2011Ice;

/**
 * What one pressure-rise test tells, and how far to trust it.
 *
 * <p>Over ice that keeps its temperature the rise depends on P_i + X/k and on k alone: no test can
 * tell a leak X from slightly warmer ice. The leak is therefore an input, from an empty test or a
 * belief with a spread, and its doubt is carried into front temperature and resistance.
 *
 * <p>The resistance is reliable in the first half of drying (Hottot et al., PDA J. 59, 138 (2005),
 * found as an abstract), by other accounts in the first two thirds (from memory): later the driest
 * vessels no longer take part, and the area that the test assumes is too large.
 *
 * @param estimate front temperature, resistance, leak as given
 * @param icePressure p_ice at the front, Pa
 * @param icePressureSpread one standard deviation of it, Pa
 * @param cautions why it may not be trusted
 */
public record RiseLesson(
    RiseEstimate estimate, double icePressure, double icePressureSpread, Set<Caution> cautions) {

  /** Why a test may not be trusted. */
  public enum Caution {
    /** More than half of the ice is gone: the resistance begins to come out too high. */
    LATE,
    /** More than two thirds of the ice is gone: only the front temperature may still be used. */
    TOO_LATE,
    /** How far drying is, is not known. */
    PROGRESS_UNKNOWN,
    /** The leak was assumed and its doubt is most of the doubt about the front. */
    LEAK_DECIDES,
    /** The curve has not leveled off, so the end of the rise is extrapolated. */
    TOO_SHORT,
    /** Residuals are far above the resolution of a gauge: vessels differ or the valve leaks. */
    MISFIT
  }

  private static final double HALF = 0.5;
  private static final double TWO_THIRDS = 2.0 / 3;
  private static final double LEVELED = 0.9;
  private static final double MISFIT_SHARE = 0.05;

  public RiseLesson {
    cautions = Set.copyOf(cautions);
  }

  /**
   * Evaluates a test.
   *
   * @param dried share of the ice that is gone, 0 to 1; NaN if not known
   * @param leak X, Pa/s, from an empty test or believed
   * @return empty if the samples do not determine front and resistance
   */
  public static Optional<RiseLesson> of(
      RiseSetup setup, List<PressureSample> samples, Estimate leak, double dried, String name) {
    var evaluation = new RiseEvaluation(new IsothermalRise());
    Optional<RiseEstimate> found = evaluation.evaluate(setup, samples, leak, name);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    RiseEstimate estimate = found.get();
    var ice = new WagnerEtAl2011Ice();
    Estimate front = estimate.frontTemperature();
    double pressure = ice.pressure(front.best());
    double spread = (ice.pressure(front.shifted(1)) - ice.pressure(front.shifted(-1))) / 2;
    Set<Caution> cautions = EnumSet.noneOf(Caution.class);
    addProgress(cautions, dried);
    double rate = setup.fillingRate(estimate.resistance().best());
    if (leak.spread() / rate > HALF * spread && spread > 0) {
      cautions.add(Caution.LEAK_DECIDES);
    }
    double last = samples.get(samples.size() - 1).pressure();
    double end = pressure + leak.best() / rate;
    if (last - setup.startPressure() < LEVELED * (end - setup.startPressure())) {
      cautions.add(Caution.TOO_SHORT);
    }
    if (estimate.misfit() > MISFIT_SHARE * (last - setup.startPressure())) {
      cautions.add(Caution.MISFIT);
    }
    return Optional.of(new RiseLesson(estimate, pressure, spread, cautions));
  }

  private static void addProgress(Set<Caution> cautions, double dried) {
    if (Double.isNaN(dried)) {
      cautions.add(Caution.PROGRESS_UNKNOWN);
    } else if (dried > TWO_THIRDS) {
      cautions.add(Caution.TOO_LATE);
    } else if (dried > HALF) {
      cautions.add(Caution.LATE);
    }
  }
}
