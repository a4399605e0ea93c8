package org.firnline.logs.text;

/**
 * Reads plain decimal numbers straight from bytes: sign, digits, decimal mark, digits, exponent.
 * Everything else is left to {@link LooseCell}. One scanner serves one file; it holds the last
 * number found.
 */
public final class NumberScan {
  private static final int MOST_DIGITS = 18;

  private final byte decimalMark;
  private long mantissa;
  private int decimals;

  /** Reads numbers with a decimal mark, '.' or ','. */
  public NumberScan(char decimalMark) {
    this.decimalMark = (byte) decimalMark;
  }

  /** Whether the range is a plain number; then {@link #mantissa} and {@link #decimals} hold it. */
  public boolean scan(byte[] b, int from, int to) {
    int i = from;
    boolean negative = false;
    if (i < to && (b[i] == '-' || b[i] == '+')) {
      negative = b[i] == '-';
      i++;
    }
    long value = 0;
    int digits = 0;
    int places = 0;
    boolean afterMark = false;
    for (; i < to; i++) {
      int digit = b[i] - '0';
      if (digit >= 0 && digit <= 9) {
        value = value * 10 + digit;
        digits++;
        if (afterMark) {
          places++;
        }
      } else if (b[i] == decimalMark && !afterMark) {
        afterMark = true;
      } else {
        break;
      }
    }
    if (digits == 0 || digits > MOST_DIGITS) {
      return false;
    }
    mantissa = negative ? -value : value;
    decimals = places;
    return i == to || exponent(b, i, to);
  }

  private boolean exponent(byte[] b, int at, int to) {
    if ((b[at] != 'e' && b[at] != 'E') || at + 1 >= to) {
      return false;
    }
    int i = at + 1;
    boolean negative = false;
    if (b[i] == '-' || b[i] == '+') {
      negative = b[i] == '-';
      i++;
    }
    int power = 0;
    if (i >= to || to - i > 3) {
      return false;
    }
    for (; i < to; i++) {
      int digit = b[i] - '0';
      if (digit < 0 || digit > 9) {
        return false;
      }
      power = power * 10 + digit;
    }
    decimals += negative ? power : -power;
    return true;
  }

  /** Digits of the last number as a whole number, with its sign. */
  public long mantissa() {
    return mantissa;
  }

  /** How many of the digits stand behind the decimal mark; negative for large powers of ten. */
  public int decimals() {
    return decimals;
  }

  /** The last number. */
  public double value() {
    return Double.parseDouble(mantissa + "E" + -decimals);
  }
}
