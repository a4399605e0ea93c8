package org.firnline.drying.cycle;

/**
 * How long a vessel without cooling stays below a limit: T(t) = T_e + (T_0 − T_e) e^(−t/τ), τ =
 * C/G.
 *
 * <p>Assumes one temperature for vessel and ice, and no sublimation, which would cool: the time is
 * on the short, cautious side.
 *
 * <p>Valid: below the melting point. Source: Newton's law of cooling; derivation in
 * docs/science.md.
 *
 * @param heatCapacity C, J/K; positive
 * @param conductance G to the surroundings, W/K; positive
 * @param surroundings T_e, K
 */
public record WarmUp(double heatCapacity, double conductance, double surroundings) {

  public WarmUp {
    if (!(heatCapacity > 0) || !(conductance > 0)) {
      throw new IllegalArgumentException("heat capacity and conductance must be positive");
    }
  }

  /** Time constant τ, s. */
  public double timeConstant() {
    return heatCapacity / conductance;
  }

  /** Temperature after {@code time_s} from {@code start_K}, K. */
  public double temperature(double start_K, double time_s) {
    return surroundings + (start_K - surroundings) * Math.exp(-time_s / timeConstant());
  }

  /**
   * Time from {@code start_K} until {@code limit_K} is reached, s; 0 if it is already warmer,
   * infinite if the surroundings never warm it that far.
   */
  public double timeTo(double start_K, double limit_K) {
    if (start_K >= limit_K) {
      return 0;
    }
    if (surroundings <= limit_K) {
      return Double.POSITIVE_INFINITY;
    }
    return timeConstant() * Math.log((surroundings - start_K) / (surroundings - limit_K));
  }
}
