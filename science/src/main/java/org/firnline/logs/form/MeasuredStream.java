package org.firnline.logs.form;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Unpacked bytes, counted: a small file that would grow without end is refused while it grows. */
final class MeasuredStream extends FilterInputStream {
  /** Plain logs pack to a tenth or so; a two-hundredfold growth beyond this size is no log. */
  private static final long FREE_BYTES = 64L << 20;

  private static final long MOST_BYTES = 2L << 30;
  private static final int MOST_GROWTH = 200;

  private final long packed;
  private long total;

  /** Counts what comes out of a file of {@code packed} bytes. */
  MeasuredStream(InputStream unpacked, long packed) {
    super(unpacked);
    this.packed = packed;
  }

  @Override
  public int read() throws IOException {
    int got = super.read();
    count(got < 0 ? 0 : 1);
    return got;
  }

  @Override
  public int read(byte[] target, int offset, int length) throws IOException {
    int got = super.read(target, offset, length);
    count(Math.max(got, 0));
    return got;
  }

  @Override
  public long skip(long count) throws IOException {
    byte[] buffer = new byte[(int) Math.min(Math.max(count, 0), 1 << 13)];
    return Math.max(0, read(buffer, 0, buffer.length));
  }

  private void count(int more) throws IOException {
    total += more;
    boolean bomb = total > FREE_BYTES && total > MOST_GROWTH * packed;
    if (bomb || total > MOST_BYTES) {
      throw new IOException(
          "unpacking stops at " + (total >> 20) + " MiB: more than a packed log can hold");
    }
  }
}
