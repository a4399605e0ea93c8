package org.firnline.app.store.series;

import java.util.Optional;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityKind;

/**
 * How values become whole numbers: so many decimals, counted from an offset. Chosen only if every
 * value comes back to its last bit.
 *
 * @param decimals 0 to 6
 * @param offset 0, or the Celsius zero in K for kelvins that were written as °C
 */
record Scale(int decimals, double offset) {
  private static final double[] POWERS = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};
  private static final double[] OFFSETS = {
    0, Quantity.parse("0 °C", QuantityKind.TEMPERATURE).si()
  };
  private static final double LARGEST = 1L << 52;

  /** The coarsest scale that loses nothing; empty where none does. NaN is left to others. */
  static Optional<Scale> of(double[] values) {
    for (int offset = 0; offset < OFFSETS.length; offset++) {
      int decimals = 0;
      int kept = 0;
      while (kept < values.length && decimals < POWERS.length) {
        if (Double.isNaN(values[kept]) || isKept(values[kept], decimals, OFFSETS[offset])) {
          kept++;
        } else {
          decimals++;
          kept = 0;
        }
      }
      if (decimals < POWERS.length) {
        return Optional.of(new Scale(decimals, OFFSETS[offset]));
      }
    }
    return Optional.empty();
  }

  private static boolean isKept(double value, int decimals, double offset) {
    double number = Math.rint((value - offset) * POWERS[decimals]);
    return Math.abs(number) < LARGEST
        && Double.doubleToRawLongBits((long) number / POWERS[decimals] + offset)
            == Double.doubleToRawLongBits(value);
  }

  long number(double value) {
    return (long) Math.rint((value - offset) * POWERS[decimals]);
  }

  double value(long number) {
    return number / POWERS[decimals] + offset;
  }

  /** 0 to 13, for the first byte of a block. */
  int key() {
    return decimals + (offset == 0 ? 0 : POWERS.length);
  }

  static Scale ofKey(int key) {
    if (key < 0 || key >= OFFSETS.length * POWERS.length) {
      throw new IllegalArgumentException("no scale has the number " + key);
    }
    return new Scale(key % POWERS.length, OFFSETS[key / POWERS.length]);
  }
}
