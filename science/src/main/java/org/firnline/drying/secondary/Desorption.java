package org.firnline.drying.secondary;

import org.firnline.matter.Water;

/**
 * First-order loss of bound water: dC/dt = −k (C − C_eq), k = k_0 exp(−E_a/(R T)).
 *
 * <p>Valid: amorphous cakes below 27 Pa, where pressure has no effect (Pikal, Shah, Roy &amp;
 * Putman, Int. J. Pharm. 60, 203 (1990), from memory). That the rate is linear in moisture is
 * published (Schneid et al., AAPS PharmSciTech 12, 379 (2011)).
 *
 * @param rateConstant k_0, 1/s; positive
 * @param activation E_a, J/mol; 0 or more
 * @param equilibrium C_eq, kg of water per kg of solids; 0 or more
 */
public record Desorption(double rateConstant, double activation, double equilibrium) {

  public Desorption {
    if (!(rateConstant > 0) || !(activation >= 0) || !(equilibrium >= 0)) {
      throw new IllegalArgumentException(
          "rate constant "
              + rateConstant
              + " 1/s must be positive, activation "
              + activation
              + " J/mol and equilibrium "
              + equilibrium
              + " 0 or more");
    }
  }

  /** k at {@code temperature_K}, 1/s. */
  public double rate(double temperature_K) {
    return rateConstant * Math.exp(-activation / (Water.GAS_CONSTANT * temperature_K));
  }
}
