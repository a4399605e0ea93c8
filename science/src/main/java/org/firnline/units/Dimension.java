package org.firnline.units;

/**
 * Exponents of the SI base units in a derived unit; {@code W/(m2 K)} is {@code kg s-3 K-1}.
 *
 * @param length exponent of the meter
 * @param mass exponent of the kilogram
 * @param time exponent of the second
 * @param temperature exponent of the kelvin
 * @param amount exponent of the mole
 */
public record Dimension(int length, int mass, int time, int temperature, int amount) {

  /** A plain number. */
  public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0);

  /** The dimension of a product of this and {@code other} raised to {@code power}. */
  public Dimension times(Dimension other, int power) {
    return new Dimension(
        length + power * other.length,
        mass + power * other.mass,
        time + power * other.time,
        temperature + power * other.temperature,
        amount + power * other.amount);
  }
}
