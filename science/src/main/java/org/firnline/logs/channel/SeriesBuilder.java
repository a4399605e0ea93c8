package org.firnline.logs.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Collects the samples of one channel while a file is read, in little memory. */
public final class SeriesBuilder {
  /** 10^15 is the last power kept exactly apart from its neighbors in all quotients we form. */
  static final int MOST_DECIMALS = 15;

  private final List<Object> chunks = new ArrayList<>();
  private final List<byte[]> qualities = new ArrayList<>();
  private byte[] decimals = new byte[16];

  private final int[] whole = new int[Series.CHUNK];
  private final double[] loose = new double[Series.CHUNK];
  private final byte[] flags = new byte[Series.CHUNK];
  private boolean anyFlag;
  private boolean isLoose;
  private int commonDecimals;
  private int filled;

  /** Number of samples so far. */
  public int size() {
    return chunks.size() * Series.CHUNK + filled;
  }

  /** Appends the number mantissa × 10^-decimalPlaces. */
  public void append(long mantissa, int decimalPlaces, Quality quality) {
    if (!isLoose && fitsWhole(mantissa, decimalPlaces)) {
      flag(quality);
    } else {
      append(toDouble(mantissa, decimalPlaces), quality);
    }
  }

  /** Appends a number that is no short decimal. */
  public void append(double value, Quality quality) {
    loosen();
    loose[filled] = value;
    flag(quality);
  }

  /** Appends a sample without a number. */
  public void appendWithoutNumber(Quality quality) {
    if (isLoose) {
      loose[filled] = Double.NaN;
    } else {
      whole[filled] = Series.NO_INT;
    }
    flag(quality);
  }

  /** The series; SI value = written number × scale + offset. */
  public Series build(double scale, double offset) {
    int size = size();
    List<Object> allChunks = new ArrayList<>(chunks);
    List<byte[]> allQualities = new ArrayList<>(qualities);
    byte[] allDecimals = Arrays.copyOf(decimals, chunks.size() + 1);
    if (filled > 0) {
      allDecimals[allChunks.size()] = (byte) commonDecimals;
      allChunks.add(compressed());
      allQualities.add(anyFlag ? Arrays.copyOf(flags, filled) : new byte[0]);
    }
    return new Series(
        size, allChunks.toArray(), allDecimals, allQualities.toArray(new byte[0][]), scale, offset);
  }

  private boolean fitsWhole(long mantissa, int decimalPlaces) {
    if (decimalPlaces < 0 || decimalPlaces > MOST_DECIMALS || mantissa == Long.MIN_VALUE) {
      return false;
    }
    if (filled == 0) {
      commonDecimals = decimalPlaces;
    } else if (decimalPlaces > commonDecimals && !rescale(decimalPlaces)) {
      return false;
    }
    long value = mantissa;
    for (int i = decimalPlaces; i < commonDecimals; i++) {
      value *= 10;
      if (Math.abs(value) > Integer.MAX_VALUE) {
        return false;
      }
    }
    if (Math.abs(value) > Integer.MAX_VALUE) {
      return false;
    }
    whole[filled] = (int) value;
    return true;
  }

  private boolean rescale(int decimalPlaces) {
    long factor = (long) Series.power(decimalPlaces - commonDecimals);
    for (int i = 0; i < filled; i++) {
      if (whole[i] != Series.NO_INT && Math.abs((double) whole[i] * factor) > Integer.MAX_VALUE) {
        return false;
      }
    }
    for (int i = 0; i < filled; i++) {
      if (whole[i] != Series.NO_INT) {
        whole[i] = (int) (whole[i] * factor);
      }
    }
    commonDecimals = decimalPlaces;
    return true;
  }

  private void loosen() {
    if (isLoose) {
      return;
    }
    for (int i = 0; i < filled; i++) {
      loose[i] = whole[i] == Series.NO_INT ? Double.NaN : toDouble(whole[i], commonDecimals);
    }
    isLoose = true;
  }

  private void flag(Quality quality) {
    flags[filled] = quality.code();
    anyFlag |= quality != Quality.GOOD;
    filled++;
    if (filled == Series.CHUNK) {
      if (chunks.size() == decimals.length) {
        decimals = Arrays.copyOf(decimals, 2 * decimals.length);
      }
      decimals[chunks.size()] = (byte) commonDecimals;
      chunks.add(compressed());
      qualities.add(anyFlag ? flags.clone() : new byte[0]);
      filled = 0;
      anyFlag = false;
      isLoose = false;
      commonDecimals = 0;
    }
  }

  private Object compressed() {
    if (isLoose) {
      return Arrays.copyOf(loose, filled);
    }
    short[] shorts = new short[filled];
    for (int i = 0; i < filled; i++) {
      if (whole[i] == Series.NO_INT) {
        shorts[i] = Series.NO_SHORT;
      } else if (Math.abs(whole[i]) > Short.MAX_VALUE) {
        return Arrays.copyOf(whole, filled);
      } else {
        shorts[i] = (short) whole[i];
      }
    }
    return shorts;
  }

  private static double toDouble(long mantissa, int decimalPlaces) {
    if (decimalPlaces >= 0 && decimalPlaces <= MOST_DECIMALS && Math.abs(mantissa) < 1L << 53) {
      return mantissa / Series.power(decimalPlaces);
    }
    return Double.parseDouble(mantissa + "E" + -decimalPlaces);
  }
}
