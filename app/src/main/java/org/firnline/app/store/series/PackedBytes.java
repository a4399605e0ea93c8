package org.firnline.app.store.series;

import java.util.Arrays;

/**
 * Bytes written one after the other. Whole numbers take one byte where they are small: seven bits a
 * byte, lowest first, the eighth says that more follow; signs go to the lowest bit (zigzag). Source
 * of both: Protocol Buffers encoding, "Base 128 Varints" and "Signed Integers" (from memory).
 */
final class PackedBytes {
  private static final int MORE = 0x80;
  private static final int SEVEN_BITS = 0x7f;
  private static final int LONGEST = 10;

  private byte[] bytes;
  private int length;

  PackedBytes(int expected) {
    bytes = new byte[Math.max(expected, LONGEST)];
  }

  void add(long number) {
    room(LONGEST);
    long rest = (number << 1) ^ (number >> 63);
    while ((rest & ~SEVEN_BITS) != 0) {
      bytes[length++] = (byte) ((rest & SEVEN_BITS) | MORE);
      rest >>>= 7;
    }
    bytes[length++] = (byte) rest;
  }

  void addByte(int number) {
    room(1);
    bytes[length++] = (byte) number;
  }

  byte[] toBytes() {
    return Arrays.copyOf(bytes, length);
  }

  private void room(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, 2 * bytes.length + more);
    }
  }
}
