package org.firnline.app.store.series;

/** Reads what {@link PackedBytes} wrote. */
final class PackedReader {
  private static final int LONGEST_SHIFT = 63;

  private final byte[] bytes;
  private int position;

  PackedReader(byte[] bytes) {
    this.bytes = bytes;
  }

  long next() {
    long rest = 0;
    for (int shift = 0; shift <= LONGEST_SHIFT; shift += 7) {
      int read = nextByte();
      rest |= (long) (read & 0x7f) << shift;
      if (read < 0x80) {
        return (rest >>> 1) ^ -(rest & 1);
      }
    }
    throw new IllegalArgumentException("a packed number does not end before byte " + position);
  }

  int nextByte() {
    if (position >= bytes.length) {
      throw new IllegalArgumentException("a packed block ends too early, at byte " + position);
    }
    return bytes[position++] & 0xff;
  }
}
