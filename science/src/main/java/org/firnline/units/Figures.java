package org.firnline.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers as people read them: rounded to the digits they deserve, with a true minus sign.
 *
 * <p>Digits follow the uncertainty where there is one: at most two significant digits of it are
 * shown (JCGM 100:2008, 7.2.6).
 */
public final class Figures {

  private static final char MINUS = '−';

  private Figures() {}

  /** {@code value} with {@code digits} significant digits, never in exponent form. */
  public static String significant(double value, int digits) {
    if (!Double.isFinite(value)) {
      return value == Double.POSITIVE_INFINITY ? "∞" : Double.isNaN(value) ? "–" : MINUS + "∞";
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
    int decimals = Math.max(0, digits - 1 - (rounded.precision() - rounded.scale() - 1));
    return sign(rounded.setScale(decimals, RoundingMode.HALF_UP).toPlainString());
  }

  /** {@code value} with a fixed number of decimals. */
  public static String decimals(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return significant(value, 1);
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    boolean negativeZero = text.startsWith("-") && text.matches("-[0.]+");
    return sign(negativeZero ? text.substring(1) : text);
  }

  /**
   * {@code si} printed in {@code unit} with {@code decimals} decimals and the unit after a space; a
   * plain number has no unit.
   */
  public static String print(double si, QuantityKind kind, Unit unit, int decimals) {
    double value = kind == QuantityKind.TEMPERATURE ? unit.fromSi(si) : unit.differenceFromSi(si);
    String number = decimals(value, decimals);
    return unit.symbol().equals("1") ? number : number + " " + unit.symbol();
  }

  /** The number of decimals that shows an uncertainty with two significant digits at most. */
  public static int decimalsFor(double uncertainty) {
    if (!(uncertainty > 0) || Double.isInfinite(uncertainty)) {
      return 0;
    }
    int leading = (int) Math.floor(Math.log10(uncertainty));
    return Math.max(0, 1 - leading);
  }

  private static String sign(String text) {
    return text.startsWith("-") ? MINUS + text.substring(1) : text;
  }
}
