package org.firnline.units;

import java.util.List;

/**
 * Reads a compound unit by recursive descent: {@code factor (('/' | '.' | '·' | '*' | ' ')
 * factor)*}, where a factor is a symbol with an optional exponent and an optional whole number
 * before it (as in {@code kg/24h}), a parenthesised expression, or {@code 1}. Each slash divides by
 * the one factor that follows it, as in {@code W/m2/K}.
 */
final class UnitExpression {

  private static final Unit ONE = new Unit("1", 1, 0, Dimension.NONE);

  private final String text;
  private int at;

  UnitExpression(String text) {
    this.text = text.strip();
  }

  Unit read() {
    if (text.isEmpty()) {
      throw new QuantityFormatException("the unit is missing", "write a unit after the number");
    }
    if (UnitCatalog.find(text).isPresent()) {
      return UnitCatalog.find(text).get();
    }
    Unit unit = product();
    if (at < text.length()) {
      throw malformed("unexpected '" + text.charAt(at) + "'");
    }
    return new Unit(text, unit.factor(), 0, unit.dimension());
  }

  private Unit product() {
    Unit result = factor();
    while (at < text.length() && text.charAt(at) != ')') {
      char operator = text.charAt(at);
      int power = operator == '/' ? -1 : 1;
      if (operator == '/' || operator == '.' || operator == '·' || operator == '*') {
        at++;
      } else if (operator != ' ') {
        throw malformed("unexpected '" + operator + "'");
      }
      skipSpaces();
      if (operator == ' ' && at < text.length() && "/.·*)".indexOf(text.charAt(at)) >= 0) {
        continue;
      }
      result = multiply(result, factor(), power);
    }
    return result;
  }

  private Unit factor() {
    skipSpaces();
    if (at < text.length() && text.charAt(at) == '(') {
      at++;
      Unit inner = product();
      if (at >= text.length()) {
        throw malformed("a bracket is not closed");
      }
      at++;
      return inner;
    }
    double number = wholeNumber();
    skipSpaces();
    boolean onlyNumber = number > 0 && (at == text.length() || !isSymbolCharacter(text.charAt(at)));
    Unit unit = onlyNumber ? ONE : power(symbol(), exponent());
    return number > 0 ? scaled(unit, number) : unit;
  }

  /** The whole number at this place, 0 if there is none. */
  private double wholeNumber() {
    int start = at;
    while (at < text.length() && Character.isDigit(text.charAt(at))) {
      at++;
    }
    return at == start ? 0 : Double.parseDouble(text.substring(start, at));
  }

  private static Unit scaled(Unit unit, double number) {
    return new Unit(unit.symbol(), number * unit.factor(), 0, unit.dimension());
  }

  private Unit symbol() {
    int start = at;
    while (at < text.length() && isSymbolCharacter(text.charAt(at))) {
      at++;
    }
    String symbol = text.substring(start, at);
    return UnitCatalog.find(symbol)
        .orElseThrow(
            () ->
                symbol.isEmpty()
                    ? malformed("a unit symbol is missing")
                    : new QuantityFormatException(
                        "unknown unit '" + symbol + "'" + inContext(symbol), nearest(symbol)));
  }

  private int exponent() {
    int mark = at;
    if (at < text.length() && text.charAt(at) == '^') {
      at++;
    }
    int sign = 1;
    if (at < text.length() && "-−⁻".indexOf(text.charAt(at)) >= 0) {
      sign = -1;
      at++;
    }
    int digit = at < text.length() ? digit(text.charAt(at)) : -1;
    if (digit < 0) {
      at = mark;
      return 1;
    }
    at++;
    return sign * digit;
  }

  /** The digit that {@code c} writes, on the line or raised; −1 if it writes none. */
  private static int digit(char c) {
    int raised = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c);
    return raised >= 0 ? raised : Character.digit(c, 10);
  }

  private static boolean isSymbolCharacter(char c) {
    return Character.isLetter(c)
        || c == '°'
        || c == 'º'
        || c == '%'
        || c == '_'
        || c == '℃'
        || c == '℉';
  }

  private void skipSpaces() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private static Unit power(Unit unit, int power) {
    return power == 1
        ? unit
        : new Unit(
            unit.symbol(),
            Math.pow(unit.factor(), power),
            0,
            Dimension.NONE.times(unit.dimension(), power));
  }

  private static Unit multiply(Unit left, Unit right, int power) {
    double factor = power > 0 ? left.factor() * right.factor() : left.factor() / right.factor();
    return new Unit(left.symbol(), factor, 0, left.dimension().times(right.dimension(), power));
  }

  private QuantityFormatException malformed(String why) {
    return new QuantityFormatException(
        "the unit '" + text + "' cannot be read: " + why,
        "write for instance W/m2/K or cm2.Torr.h/g");
  }

  private String inContext(String symbol) {
    return symbol.equals(text) ? "" : " in '" + text + "'";
  }

  private static String nearest(String symbol) {
    List<String> close = UnitCatalog.symbolsLike(symbol);
    return close.isEmpty()
        ? "use for instance °C, Pa, mbar, mTorr, mL, mm, h"
        : "did you mean " + String.join(" or ", close) + "?";
  }
}
