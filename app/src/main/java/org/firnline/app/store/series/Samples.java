package org.firnline.app.store.series;

import java.util.Arrays;

/**
 * Samples of one channel, in the order they arrived.
 *
 * @param time_ms milliseconds since 1970, UTC
 * @param value in the unit of the series; NaN where there was none
 */
@SuppressWarnings("ArrayRecordComponent") // compared bit by bit below
public record Samples(long[] time_ms, double[] value) {

  public Samples {
    if (time_ms.length != value.length) {
      throw new IllegalArgumentException(
          time_ms.length + " times do not belong to " + value.length + " values");
    }
  }

  /** No sample. */
  public static Samples none() {
    return new Samples(new long[0], new double[0]);
  }

  /** How many. */
  public int size() {
    return value.length;
  }

  /** These, then others. */
  public Samples then(Samples others) {
    long[] times = Arrays.copyOf(time_ms, size() + others.size());
    double[] values = Arrays.copyOf(value, size() + others.size());
    System.arraycopy(others.time_ms, 0, times, size(), others.size());
    System.arraycopy(others.value, 0, values, size(), others.size());
    return new Samples(times, values);
  }

  /** A stretch. */
  public Samples between(int from, int to) {
    return new Samples(Arrays.copyOfRange(time_ms, from, to), Arrays.copyOfRange(value, from, to));
  }

  /** Equal to the last bit of every value. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Samples samples
        && Arrays.equals(time_ms, samples.time_ms)
        && Arrays.equals(bits(value), bits(samples.value));
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(time_ms) + Arrays.hashCode(bits(value));
  }

  @Override
  public String toString() {
    return size() + " samples";
  }

  private static long[] bits(double[] values) {
    return Arrays.stream(values).mapToLong(Double::doubleToRawLongBits).toArray();
  }
}
