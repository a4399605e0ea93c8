package org.firnline.drying.cycle;

import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;

/**
 * What hours in the frozen but soft state do: ice crystals grow, the cake becomes more open and
 * gives up its bound water more slowly.
 *
 * <p>Assumes that the whole effect takes {@code hold} at or above {@code above}, counted while the
 * product is frozen and not yet under vacuum, and that a part of the time does a part of it. The
 * sizes are factors of their own origin, for no law of crystal growth is known that could be told
 * from so little.
 *
 * @param above temperature from which it happens, K: about T_g′ of the solute
 * @param hold time for the whole effect, s; positive
 * @param resistance factor on the resistance of the cake; best positive
 * @param desorption factor on the rate of desorption; best positive
 */
public record Annealing(double above, double hold, Estimate resistance, Estimate desorption) {

  private static final Source CHOUVENC =
      new Source(
          "Chouvenc, Vessot & Andrieu, PDA J. 60, 95 (2006), abstract: resistance falls, the"
              + " desorption constant by a factor of two",
          Source.Status.FOUND);

  /** Resistance of annealed over not annealed cake in this program's default sets. */
  private static final double USUAL_RESISTANCE = 0.63;

  private static final double USUAL_HOLD_S = 6 * 3_600;

  public Annealing {
    if (!(above > 0) || !(hold > 0) || !(resistance.best() > 0) || !(desorption.best() > 0)) {
      throw new IllegalArgumentException(
          "temperature, hold and both factors of an annealing must be positive");
    }
  }

  /**
   * What may be expected where nobody has measured: six hours (common practice, no published
   * source) take the resistance to 0.63 (assumed, the direction is published) and halve the rate of
   * desorption (published).
   */
  public static Annealing usual(double above_K) {
    return new Annealing(
        above_K,
        USUAL_HOLD_S,
        new Estimate(
            USUAL_RESISTANCE,
            0.15,
            new Provenance.Assumed("default set of annealed over that of not annealed cake")),
        new Estimate(0.5, 0.1, new Provenance.Published(CHOUVENC)));
  }

  /** Factor on the resistance after {@code time_s} above the temperature. */
  double resistanceAfter(double time_s) {
    return 1 + (resistance.best() - 1) * Math.min(1, time_s / hold);
  }

  /** Factor on the rate of desorption after {@code time_s} above the temperature. */
  double desorptionAfter(double time_s) {
    return 1 + (desorption.best() - 1) * Math.min(1, time_s / hold);
  }
}
