package org.firnline.drying.freezing;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.firnline.numerics.Normal;

/**
 * The temperatures at which ice appears in the vessels of one load, by chance.
 *
 * <p>Assumes independent vessels and a normal spread, cut at the freezing point.
 *
 * <p>Source: usual onset −10 to −15 °C with a spread of 2 to 3 K (from memory); that the kinetics
 * do not depend on the solute: Deck, Wittenberg &amp; Mazzotti, J. Phys. Chem. Lett. 14, 5993
 * (2023).
 *
 * @param mean K; positive
 * @param spread one standard deviation, K; 0 or more
 */
public record NucleationSpread(double mean, double spread) {

  /** Vials of filtered solution without any control: −12 ± 2.5 °C (from memory). */
  public static final NucleationSpread UNCONTROLLED = new NucleationSpread(261.15, 2.5);

  /**
   * Relative change of primary drying time per kelvin of warmer nucleation. Source: Searles,
   * Carpenter &amp; Randolph, J. Pharm. Sci. 90, 860 (2001) (from memory).
   */
  public static final double DRYING_TIME_PER_KELVIN = -0.03;

  public NucleationSpread {
    if (!(mean > 0) || !(spread >= 0)) {
      throw new IllegalArgumentException(
          "nucleation at " + mean + " K with a spread of " + spread + " K cannot be");
    }
  }

  /**
   * One temperature for each vessel, K; the same seed gives the same load.
   *
   * @param freezingPoint_K no ice appears above it
   */
  public List<Double> draw(int count, double freezingPoint_K, long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<Double> drawn = new ArrayList<>(count);
    for (int vessel = 0; vessel < count; vessel++) {
      double deviation = Normal.quantile(chance.nextDouble(Double.MIN_NORMAL, 1));
      drawn.add(Math.min(freezingPoint_K, mean + spread * deviation));
    }
    return List.copyOf(drawn);
  }

  /**
   * What a nucleation temperature does to drying time, as a factor: warmer nucleation makes larger
   * crystals and an opener cake. Use it instead of an independent spread of the cake resistance, or
   * leave it out; both together count the same spread twice.
   */
  public double dryingTimeFactor(double nucleation_K) {
    return Math.exp(DRYING_TIME_PER_KELVIN * (nucleation_K - mean));
  }
}
