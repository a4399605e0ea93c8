package org.firnline.units;

/**
 * A unit of measure: {@code SI = factor * value + offset}.
 *
 * @param symbol as written, for instance {@code mTorr}
 * @param factor SI units in one of this unit; positive
 * @param offset added after scaling; non-zero only for °C and °F
 * @param dimension the base-unit exponents
 */
public record Unit(String symbol, double factor, double offset, Dimension dimension) {

  public Unit {
    if (!(factor > 0) || Double.isInfinite(factor)) {
      throw new IllegalArgumentException(
          "unit " + symbol + ": factor " + factor + " is not positive");
    }
  }

  /**
   * Reads a unit, simple or compound: {@code mTorr}, {@code W/(m2 K)}, {@code cm2.Torr.h/g}, {@code
   * cal/s/cm2/K}.
   *
   * @throws QuantityFormatException if a symbol is unknown or the expression is malformed
   */
  public static Unit parse(String text) {
    return new UnitExpression(text).read();
  }

  /** The SI value of {@code value} in this unit, as an absolute quantity. */
  public double toSi(double value) {
    return factor * value + offset;
  }

  /** The SI value of a difference of {@code value} in this unit; °C and °F are not shifted. */
  public double differenceToSi(double value) {
    return factor * value;
  }

  /** The value in this unit of an absolute quantity given in SI. */
  public double fromSi(double si) {
    return (si - offset) / factor;
  }

  /** The value in this unit of a difference given in SI. */
  public double differenceFromSi(double si) {
    return si / factor;
  }
}
