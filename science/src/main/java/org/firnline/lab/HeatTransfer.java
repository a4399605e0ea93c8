package org.firnline.lab;

/**
 * Heat-transfer coefficient from the shelf surface to the bottom of a vessel, referred to the outer
 * bottom area: K_v(P) = a + bP/(1 + cP).
 *
 * <p>Source: Pikal, Roy &amp; Shah, J. Pharm. Sci. 73, 1224 (1984) (form from memory).
 *
 * @param contact a: contact and radiation, W/(m2 K); 0 or more, infinite for perfect contact
 * @param gas b: gas conduction per pressure, W/(m2 K Pa); 0 or more
 * @param leveling c: how the gas term levels off, 1/Pa; 0 or more
 */
public record HeatTransfer(double contact, double gas, double leveling) {

  public HeatTransfer {
    Check.notNegative(contact, "contact heat transfer", "W/(m2 K)");
    Check.notNegative(gas, "gas heat transfer", "W/(m2 K Pa)");
    Check.notNegative(leveling, "leveling of gas heat transfer", "1/Pa");
  }

  /** K_v in W/(m2 K) at {@code pressure_Pa}, which is 0 or more. */
  public double at(double pressure_Pa) {
    return contact + gas * pressure_Pa / (1 + leveling * pressure_Pa);
  }

  /** Every part multiplied by {@code factor}: a vessel warmer or colder than the typical one. */
  public HeatTransfer times(double factor) {
    return new HeatTransfer(contact * factor, gas * factor, leveling);
  }
}
