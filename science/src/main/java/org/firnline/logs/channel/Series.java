package org.firnline.logs.channel;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The samples of one channel, immutable. A sample that is not {@link Quality#GOOD} reads as NaN and
 * keeps the number the file wrote, so that no flag destroys evidence.
 *
 * <p>Decimal numbers are kept as whole numbers with a common power of ten per chunk, two or four
 * bytes each: a log of millions of rows stays small and every value is exactly the one written.
 */
public final class Series {
  static final int CHUNK = 4096;
  static final short NO_SHORT = Short.MIN_VALUE;
  static final int NO_INT = Integer.MIN_VALUE;

  private static final double[] POWERS_OF_TEN = powersOfTen();

  private final int size;
  private final Object[] chunks;
  private final byte[] decimals;
  private final byte[][] qualities;
  private final double scale;
  private final double offset;

  /** Takes ownership of its arrays; only the builder calls it. */
  Series(
      int size, Object[] chunks, byte[] decimals, byte[][] qualities, double scale, double offset) {
    this.size = size;
    this.chunks = chunks;
    this.decimals = decimals;
    this.qualities = qualities;
    this.scale = scale;
    this.offset = offset;
  }

  /**
   * A series of SI values.
   *
   * @param values SI values, NaN where a sample is missing; copied
   */
  public static Series of(double[] values) {
    SeriesBuilder builder = new SeriesBuilder();
    for (double value : values) {
      if (Double.isNaN(value)) {
        builder.appendWithoutNumber(Quality.MISSING);
      } else {
        builder.append(value, Quality.GOOD);
      }
    }
    return builder.build(1, 0);
  }

  /** Number of samples, equal to the size of the log's time axis. */
  public int size() {
    return size;
  }

  /** SI value of a sample, NaN unless its quality is good. */
  public double value(int index) {
    byte[] flags = qualities[index / CHUNK];
    if (flags.length > 0 && flags[index % CHUNK] != 0) {
      return Double.NaN;
    }
    return asWritten(index) * scale + offset;
  }

  /** What the file says about a sample. */
  public Quality quality(int index) {
    byte[] flags = qualities[index / CHUNK];
    return flags.length == 0 ? Quality.GOOD : Quality.of(flags[index % CHUNK]);
  }

  /**
   * The number the file wrote, in the file's own unit, whatever its quality; NaN if it wrote none.
   * For an over- or under-range sample this is the limit if the file names it.
   */
  public double asWritten(int index) {
    int place = index / CHUNK;
    int within = index % CHUNK;
    Object chunk = chunks[place];
    if (chunk instanceof short[] shorts) {
      return shorts[within] == NO_SHORT ? Double.NaN : shorts[within] / power(decimals[place]);
    }
    if (chunk instanceof int[] ints) {
      return ints[within] == NO_INT ? Double.NaN : ints[within] / power(decimals[place]);
    }
    return ((double[]) chunk)[within];
  }

  /** Whether all written numbers lie between two limits; samples without a number are left out. */
  public boolean isWrittenWithin(double low, double high) {
    for (int place = 0; place < chunks.length; place++) {
      double power = power(decimals[place]);
      boolean within =
          chunks[place] instanceof short[] shorts
              ? isWithin(shorts, low * power, high * power)
              : isWithin(place, low, high);
      if (!within) {
        return false;
      }
    }
    return true;
  }

  private static boolean isWithin(short[] numbers, double low, double high) {
    for (short number : numbers) {
      if (number != NO_SHORT && (number < low || number > high)) {
        return false;
      }
    }
    return true;
  }

  private boolean isWithin(int place, double low, double high) {
    for (int i = place * CHUNK; i < Math.min(size, (place + 1) * CHUNK); i++) {
      double written = asWritten(i);
      if (written < low || written > high) {
        return false;
      }
    }
    return true;
  }

  /** A fresh copy of all SI values, NaN where the quality is not good. */
  public double[] toArray() {
    double[] values = new double[size];
    for (int i = 0; i < size; i++) {
      values[i] = value(i);
    }
    return values;
  }

  /** Number of samples with a good value. */
  public int goodCount() {
    int good = 0;
    for (int i = 0; i < size; i++) {
      if (quality(i) == Quality.GOOD) {
        good++;
      }
    }
    return good;
  }

  /** Other samples in this series' unit. */
  public Series likewise(SeriesBuilder samples) {
    return samples.build(scale, offset);
  }

  /** The same samples in another unit: SI value = written number × scale + offset. */
  public Series in(double newScale, double newOffset) {
    return new Series(size, chunks, decimals, qualities, newScale, newOffset);
  }

  /** The same samples, some of them marked as not good; their written numbers stay. */
  public Series flagged(BitSet samples, Quality quality) {
    byte[][] marked = qualities.clone();
    for (int i = samples.nextSetBit(0); i >= 0; i = samples.nextSetBit(i + 1)) {
      int place = i / CHUNK;
      if (marked[place] == qualities[place]) {
        int length = Math.min(CHUNK, size - place * CHUNK);
        marked[place] = Arrays.copyOf(qualities[place], length);
      }
      marked[place][i % CHUNK] = quality.code();
    }
    return new Series(size, chunks, decimals, marked, scale, offset);
  }

  static double power(int decimals) {
    return POWERS_OF_TEN[decimals];
  }

  private static double[] powersOfTen() {
    double[] powers = new double[SeriesBuilder.MOST_DECIMALS + 1];
    double power = 1;
    for (int i = 0; i < powers.length; i++) {
      powers[i] = power;
      power *= 10;
    }
    return powers;
  }
}
