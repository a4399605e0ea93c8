package org.firnline.units;

/**
 * Reads a compound unit by recursive descent: {@code factor (('/' | '.' | '·' | '*' | ' ')
 * factor)*}, where a factor is a symbol with an optional exponent, a parenthesised expression, or
 * {@code 1}. Each slash divides by the one factor that follows it, as in {@code W/m2/K}.
 */
final class UnitExpression {

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
      if (operator == ' ' && at < text.length() && text.charAt(at) == '/') {
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
    Unit symbol = symbol();
    return power(symbol, exponent());
  }

  private Unit symbol() {
    int start = at;
    while (at < text.length() && isSymbolCharacter(text.charAt(at))) {
      at++;
    }
    if (at == start && at < text.length() && text.charAt(at) == '1') {
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
    if (at < text.length() && text.charAt(at) == '²') {
      at++;
      return 2;
    }
    if (at < text.length() && text.charAt(at) == '³') {
      at++;
      return 3;
    }
    int mark = at;
    if (at < text.length() && text.charAt(at) == '^') {
      at++;
    }
    int sign = 1;
    if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '−')) {
      sign = -1;
      at++;
    }
    if (at < text.length() && Character.isDigit(text.charAt(at))) {
      return sign * (text.charAt(at++) - '0');
    }
    at = mark;
    return 1;
  }

  private static boolean isSymbolCharacter(char c) {
    return Character.isLetter(c) || c == '°' || c == 'º' || c == '%' || c == '℃' || c == '℉';
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
    for (String known : UnitCatalog.symbols()) {
      if (known.equalsIgnoreCase(symbol)) {
        return "did you mean " + known + "?";
      }
    }
    return "use for instance °C, Pa, mbar, mTorr, mL, mm, h";
  }
}
