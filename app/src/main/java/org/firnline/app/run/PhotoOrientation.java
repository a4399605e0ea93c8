package org.firnline.app.run;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** How a camera was held, read from the first bytes of a JPEG (EXIF 2.3, tag 0x0112). */
final class PhotoOrientation {
  /** How many first bytes are needed. */
  static final int HEAD = 65_536;

  private static final int UPRIGHT = 1;
  private static final int START = 0xffd8;
  private static final int APP1 = 0xffe1;
  private static final int SCAN = 0xffda;
  private static final int EXIF = 0x45786966;
  private static final int ORIENTATION = 0x0112;
  private static final int ENTRY_BYTES = 12;

  private PhotoOrientation() {}

  /** 1 to 8; 1, upright, where the bytes do not say. */
  static int of(byte[] head) {
    try {
      return find(ByteBuffer.wrap(head));
    } catch (BufferUnderflowException | IllegalArgumentException e) {
      return UPRIGHT;
    }
  }

  private static int find(ByteBuffer bytes) {
    if (unsigned(bytes.getShort()) != START) {
      return UPRIGHT;
    }
    for (int marker = unsigned(bytes.getShort()); marker != SCAN; ) {
      int next = bytes.position() + unsigned(bytes.getShort(bytes.position()));
      bytes.getShort();
      if (marker == APP1 && bytes.getInt() == EXIF) {
        bytes.getShort();
        return inTiff(bytes.slice());
      }
      bytes.position(next);
      marker = unsigned(bytes.getShort());
    }
    return UPRIGHT;
  }

  private static int inTiff(ByteBuffer tiff) {
    tiff.order(tiff.getShort() == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    tiff.getShort();
    int directory = tiff.getInt();
    tiff.position(directory);
    int entries = unsigned(tiff.getShort());
    for (int i = 0; i < entries; i++) {
      tiff.position(directory + 2 + i * ENTRY_BYTES);
      if (unsigned(tiff.getShort()) == ORIENTATION) {
        tiff.position(directory + 2 + i * ENTRY_BYTES + 8);
        int orientation = unsigned(tiff.getShort());
        return orientation >= 1 && orientation <= 8 ? orientation : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  private static int unsigned(short value) {
    return value & 0xffff;
  }
}
