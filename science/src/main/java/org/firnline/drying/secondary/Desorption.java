package org.firnline.drying.secondary;

import org.firnline.matter.Water;

/**
 * First-order loss of bound water: dC/dt = −k (C − C_eq), k = k_0 exp(−E_a/(R T)).
 *
 * <p>Valid: amorphous cakes below 27 Pa, where pressure has no effect on k (Pikal, Shah, Roy &amp;
 * Putman, Int. J. Pharm. 60, 203 (1990), from memory). That the rate is linear in moisture is
 * published (Schneid et al., AAPS PharmSciTech 12, 379 (2011)). Usual activation energies are 30 to
 * 60 kJ/mol, usual rates 1e-5 to 1e-4 1/s at 20 to 40 °C (from memory).
 *
 * @param rateConstant k_0, 1/s; positive
 * @param activation E_a, J/mol; 0 or more
 * @param equilibrium C_eq
 */
public record Desorption(double rateConstant, double activation, EquilibriumMoisture equilibrium) {

  public Desorption {
    if (!(rateConstant > 0) || Double.isInfinite(rateConstant) || !(activation >= 0)) {
      throw new IllegalArgumentException(
          "rate constant "
              + rateConstant
              + " 1/s must be positive, activation "
              + activation
              + " J/mol 0 or more");
    }
  }

  /**
   * With the same equilibrium at every temperature.
   *
   * @param equilibrium C_eq, kg of water per kg of solids; 0 or more
   */
  public Desorption(double rateConstant, double activation, double equilibrium) {
    this(rateConstant, activation, new EquilibriumMoisture.Constant(equilibrium));
  }

  /**
   * Through one measured rate.
   *
   * @param rate 1/s at {@code temperature_K}
   * @param activation J/mol
   */
  public static Desorption through(
      double rate, double temperature_K, double activation, EquilibriumMoisture equilibrium) {
    double exponent = activation / (Water.GAS_CONSTANT * temperature_K);
    return new Desorption(rate * Math.exp(exponent), activation, equilibrium);
  }

  /** k at {@code temperature_K}, 1/s. */
  public double rate(double temperature_K) {
    return rateConstant * Math.exp(-activation / (Water.GAS_CONSTANT * temperature_K));
  }

  /**
   * The same faster by {@code factor}; annealing about halves it (Chouvenc, Vessot &amp; Andrieu,
   * PDA J. 60, 95 (2006), abstract).
   */
  public Desorption times(double factor) {
    return new Desorption(factor * rateConstant, activation, equilibrium);
  }
}
