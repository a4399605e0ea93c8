package org.firnline.learning.moisture;

import java.util.List;
import java.util.Optional;
import org.firnline.matter.Water;
import org.firnline.numerics.Fit;
import org.firnline.numerics.LeastSquares;

/**
 * The pace of secondary drying from moisture results: dC/dt = −k (C − C_eq), k = k_r exp(−E_a/R
 * (1/T − 1/T_r)). Closed form over straight lines of temperature: ln of what is left is minus ∫k
 * dt.
 *
 * <p>With results at one temperature only the pace there is known; then E_a is held at its prior
 * and said to be. The start moisture may be learned when a result right after the ice went is
 * given.
 *
 * <p>Source: first-order desorption, Pikal et al., Int. J. Pharm. 60, 203 (1990) (from memory);
 * equations in docs/science.md, section 7.
 */
public final class DesorptionFit {

  /** k is given at this temperature, K: 20 °C. */
  public static final double REFERENCE_K = 293.15;

  private static final int PARTS = 20;

  private DesorptionFit() {}

  /**
   * What is believed before.
   *
   * @param rate k_r at 20 °C, 1/s; positive
   * @param rateSpread standard deviation of its logarithm; positive
   * @param activation E_a, J/mol; positive
   * @param activationSpread J/mol; positive
   * @param start C when the last ice went, kg/kg; positive
   * @param startSpread standard deviation of its logarithm; positive
   * @param equilibrium C_eq, kg/kg; taken as known
   */
  public record Belief(
      double rate,
      double rateSpread,
      double activation,
      double activationSpread,
      double start,
      double startSpread,
      double equilibrium) {

    public Belief {
      if (!(rate > 0) || !(activation > 0) || !(start > equilibrium) || !(equilibrium >= 0)) {
        throw new IllegalArgumentException("a belief about desorption is out of range");
      }
      if (!(rateSpread > 0) || !(activationSpread > 0) || !(startSpread > 0)) {
        throw new IllegalArgumentException("spreads of beliefs must be positive");
      }
    }
  }

  /**
   * What the results say.
   *
   * @param rate k_r at 20 °C, 1/s
   * @param rateSpread standard deviation of its logarithm
   * @param activation E_a, J/mol
   * @param activationSpread J/mol
   * @param start C when the last ice went, kg/kg
   * @param startSpread standard deviation of its logarithm
   * @param chiSquare sum of squared residuals of the results, in their errors
   * @param activationLearned whether the results say more about E_a than was believed
   */
  public record Kinetics(
      double rate,
      double rateSpread,
      double activation,
      double activationSpread,
      double start,
      double startSpread,
      double chiSquare,
      boolean activationLearned) {}

  private static final double LITTLE = 0.7;

  /** Learns from at least one result; empty if the search does not come to an end. */
  public static Optional<Kinetics> of(List<MoistureResult> results, Belief belief) {
    if (results.isEmpty()) {
      throw new IllegalArgumentException("no moisture result");
    }
    Fit fit =
        LeastSquares.fit(
                point -> whitened(results, belief, point),
                new double[results.size() + 3],
                new double[] {0, 0, 0},
                new double[] {1, 1, 1})
            .withKnownDeviations();
    if (!fit.determined()) {
      return Optional.empty();
    }
    double chiSquare = 0;
    double[] point = {fit.value(0), fit.value(1), fit.value(2)};
    double[] whitened = whitened(results, belief, point);
    for (int i = 0; i < results.size(); i++) {
      chiSquare += whitened[i] * whitened[i];
    }
    return Optional.of(
        new Kinetics(
            belief.rate() * Math.exp(belief.rateSpread() * point[0]),
            belief.rateSpread() * fit.standardError(0),
            belief.activation() + belief.activationSpread() * point[1],
            belief.activationSpread() * fit.standardError(1),
            start(belief, point[2]),
            belief.startSpread() * fit.standardError(2),
            chiSquare,
            fit.standardError(1) < LITTLE));
  }

  /** The moisture that {@code kinetics} leave after {@code course}. */
  public static double moisture(
      double rate,
      double activation,
      double start,
      double equilibrium,
      List<MoistureResult.Warmth> course) {
    return equilibrium + (start - equilibrium) * Math.exp(-paced(rate, activation, course));
  }

  /** Parameters count in standard deviations of the belief, from its best values. */
  private static double[] whitened(List<MoistureResult> results, Belief belief, double[] point) {
    double rate = belief.rate() * Math.exp(belief.rateSpread() * point[0]);
    double activation = belief.activation() + belief.activationSpread() * point[1];
    double[] whitened = new double[results.size() + 3];
    for (int i = 0; i < results.size(); i++) {
      MoistureResult result = results.get(i);
      double left =
          moisture(
              rate, activation, start(belief, point[2]), belief.equilibrium(), result.course());
      whitened[i] = (left - result.moisture()) / result.error();
    }
    System.arraycopy(point, 0, whitened, results.size(), 3);
    return whitened;
  }

  private static double start(Belief belief, double deviations) {
    return belief.equilibrium()
        + (belief.start() - belief.equilibrium()) * Math.exp(belief.startSpread() * deviations);
  }

  /** ∫ k dt by Simpson's rule on each straight line of temperature. */
  private static double paced(double rate, double activation, List<MoistureResult.Warmth> course) {
    double sum = 0;
    for (int i = 1; i < course.size(); i++) {
      MoistureResult.Warmth from = course.get(i - 1);
      MoistureResult.Warmth to = course.get(i);
      double part = (to.time() - from.time()) / PARTS;
      for (int j = 0; j <= PARTS; j++) {
        double share = (double) j / PARTS;
        double temperature = from.temperature() + share * (to.temperature() - from.temperature());
        double weight = j == 0 || j == PARTS ? 1 : j % 2 == 1 ? 4 : 2;
        sum +=
            weight
                * part
                / 3
                * rate
                * Math.exp(-activation / Water.GAS_CONSTANT * (1 / temperature - 1 / REFERENCE_K));
      }
    }
    return sum;
  }
}
