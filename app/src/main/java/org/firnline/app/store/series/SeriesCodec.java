package org.firnline.app.store.series;

import java.io.ByteArrayOutputStream;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Packs samples without losing a bit. Times become differences of differences, which are zero in a
 * steady log. Values of few decimals become whole numbers and their differences; any others keep
 * all bits, as the difference (exclusive or) from the value before. Both are then deflated at the
 * quickest level. The first byte names the form, so that a later form can stand beside it.
 *
 * <p>NaN is the canonical one of Java; a NaN with other bits is kept bit by bit.
 */
public final class SeriesCodec {
  /** Samples of a block that is not added to any more. */
  public static final int FULL_BLOCK = 4_096;

  private static final int ALL_BITS = 0xff;
  private static final int LARGEST_BLOCK = 1 << 20;
  private static final long NAN = Double.doubleToRawLongBits(Double.NaN);

  private SeriesCodec() {}

  /** The samples as bytes. */
  public static byte[] pack(Samples samples) {
    PackedBytes out = new PackedBytes(samples.size() * 4 + 16);
    out.add(samples.size());
    packTimes(samples.time_ms(), out);
    Optional<Scale> scale =
        hasOnlyOrdinaryNaN(samples.value()) ? Scale.of(samples.value()) : Optional.empty();
    if (scale.isPresent()) {
      packNumbers(samples.value(), scale.get(), out);
    } else {
      packBits(samples.value(), out);
    }
    return deflated(out.toBytes());
  }

  /**
   * The samples from bytes.
   *
   * @throws IllegalArgumentException if the bytes are not a packed block
   */
  public static Samples unpack(byte[] packed) {
    PackedReader in = new PackedReader(inflated(packed));
    long size = in.next();
    if (size < 0 || size > LARGEST_BLOCK) {
      throw new IllegalArgumentException("a packed block cannot hold " + size + " samples");
    }
    long[] times = unpackTimes((int) size, in);
    int form = in.nextByte();
    double[] values =
        form == ALL_BITS
            ? unpackBits((int) size, in)
            : unpackNumbers((int) size, Scale.ofKey(form), in);
    return new Samples(times, values);
  }

  private static boolean hasOnlyOrdinaryNaN(double[] values) {
    for (double value : values) {
      if (Double.isNaN(value) && Double.doubleToRawLongBits(value) != NAN) {
        return false;
      }
    }
    return true;
  }

  private static void packTimes(long[] times, PackedBytes out) {
    long last = 0;
    long step = 0;
    for (long time : times) {
      out.add(time - last - step);
      step = time - last;
      last = time;
    }
  }

  private static long[] unpackTimes(int size, PackedReader in) {
    long[] times = new long[size];
    long last = 0;
    long step = 0;
    for (int i = 0; i < size; i++) {
      step += in.next();
      last += step;
      times[i] = last;
    }
    return times;
  }

  /** Missing values first, as lengths of stretches that are there and are not, in turn. */
  private static void packNumbers(double[] values, Scale scale, PackedBytes out) {
    out.addByte(scale.key());
    packStretches(values, out);
    long last = 0;
    for (double value : values) {
      if (!Double.isNaN(value)) {
        long number = scale.number(value);
        out.add(number - last);
        last = number;
      }
    }
  }

  private static void packStretches(double[] values, PackedBytes out) {
    int from = 0;
    boolean there = true;
    for (int i = 0; i < values.length; i++) {
      if (Double.isNaN(values[i]) == there) {
        out.add(i - from);
        from = i;
        there = !there;
      }
    }
    out.add(values.length - from);
  }

  private static double[] unpackNumbers(int size, Scale scale, PackedReader in) {
    double[] values = new double[size];
    boolean there = true;
    for (int at = 0; at < size; there = !there) {
      long length = in.next();
      if (length < 0 || length > size - at) {
        throw new IllegalArgumentException("a packed block has a stretch of " + length);
      }
      for (int end = at + (int) length; at < end; at++) {
        values[at] = there ? 0 : Double.NaN;
      }
    }
    if (size == 0) {
      in.next();
    }
    long last = 0;
    for (int i = 0; i < size; i++) {
      if (!Double.isNaN(values[i])) {
        last += in.next();
        values[i] = scale.value(last);
      }
    }
    return values;
  }

  /** One plane of bytes after the other, the highest first: neighbours there are much alike. */
  private static void packBits(double[] values, PackedBytes out) {
    out.addByte(ALL_BITS);
    for (int shift = Long.SIZE - Byte.SIZE; shift >= 0; shift -= Byte.SIZE) {
      long last = 0;
      for (double value : values) {
        long bits = Double.doubleToRawLongBits(value);
        out.addByte((int) ((bits ^ last) >>> shift & 0xff));
        last = bits;
      }
    }
  }

  private static double[] unpackBits(int size, PackedReader in) {
    long[] bits = new long[size];
    for (int shift = Long.SIZE - Byte.SIZE; shift >= 0; shift -= Byte.SIZE) {
      for (int i = 0; i < size; i++) {
        bits[i] |= (long) in.nextByte() << shift;
      }
    }
    double[] values = new double[size];
    long last = 0;
    for (int i = 0; i < size; i++) {
      last ^= bits[i];
      values[i] = Double.longBitsToDouble(last);
    }
    return values;
  }

  private static byte[] deflated(byte[] plain) {
    Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
    try {
      deflater.setInput(plain);
      deflater.finish();
      ByteArrayOutputStream out = new ByteArrayOutputStream(plain.length / 2 + 16);
      byte[] buffer = new byte[8_192];
      while (!deflater.finished()) {
        out.write(buffer, 0, deflater.deflate(buffer));
      }
      return out.toByteArray();
    } finally {
      deflater.end();
    }
  }

  private static byte[] inflated(byte[] packed) {
    Inflater inflater = new Inflater(true);
    try {
      inflater.setInput(packed);
      ByteArrayOutputStream out = new ByteArrayOutputStream(packed.length * 4);
      byte[] buffer = new byte[8_192];
      while (!inflater.finished()) {
        int read = inflater.inflate(buffer);
        if (read == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
          throw new IllegalArgumentException("a packed block ends too early");
        }
        out.write(buffer, 0, read);
      }
      return out.toByteArray();
    } catch (DataFormatException e) {
      throw new IllegalArgumentException("a packed block is damaged: " + e.getMessage(), e);
    } finally {
      inflater.end();
    }
  }
}
