package org.firnline.logs.text;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Counts what a file's bytes say about their character set, in one pass. */
final class ByteCensus {
  private static final VarHandle EIGHT_BYTES =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private long total;
  private long high;
  private long zerosAtEven;
  private long zerosAtOdd;
  private long windowsSigns;
  private long dosSigns;
  private boolean utf8 = true;
  private int continuationsDue;
  private boolean shiftJis = true;
  private boolean shiftJisSecond;
  private long shiftJisPairs;
  private long loneSigns;
  private long adjacentPairs;
  private long lastPairEnd = -9;
  private byte previous;

  void count(byte[] bytes, int length) {
    int i = 0;
    while (i < length) {
      if (i + 8 <= length && continuationsDue == 0 && !shiftJisSecond && isPlain(bytes, i)) {
        i += 8;
        total += 8;
        continue;
      }
      byte b = bytes[i++];
      if (b < 0 || continuationsDue > 0 || shiftJisSecond) {
        highOrDue(b);
      } else if (b == 0) {
        if ((total & 1) == 0) {
          zerosAtEven++;
        } else {
          zerosAtOdd++;
        }
      }
      previous = b;
      total++;
    }
  }

  /** Whether eight bytes hold neither a zero nor a high bit: most of every log. */
  private static boolean isPlain(byte[] bytes, int at) {
    long eight = (long) EIGHT_BYTES.get(bytes, at);
    long zeros = (eight - 0x0101010101010101L) & ~eight;
    return ((eight | zeros) & 0x8080808080808080L) == 0;
  }

  private void highOrDue(byte signed) {
    int b = signed & 0xFF;
    if (b >= 0x80) {
      high++;
      countSigns(b);
    }
    followUtf8(b);
    followShiftJis(b);
  }

  private void followUtf8(int b) {
    if (continuationsDue > 0) {
      if ((b & 0xC0) == 0x80) {
        continuationsDue--;
      } else {
        utf8 = false;
        continuationsDue = 0;
      }
    } else if (b >= 0xC2 && b <= 0xDF) {
      continuationsDue = 1;
    } else if (b >= 0xE0 && b <= 0xEF) {
      continuationsDue = 2;
    } else if (b >= 0xF0 && b <= 0xF4) {
      continuationsDue = 3;
    } else if (b >= 0x80) {
      utf8 = false;
    }
  }

  private void followShiftJis(int b) {
    if (shiftJisSecond) {
      shiftJisSecond = false;
      if (b >= 0x40 && b <= 0xFC && b != 0x7F) {
        shiftJisPairs++;
        adjacentPairs += total - lastPairEnd == 2 ? 1 : 0;
        lastPairEnd = total;
      } else {
        shiftJis = false;
      }
    } else if ((b >= 0x81 && b <= 0x9F) || (b >= 0xE0 && b <= 0xFC)) {
      shiftJisSecond = true;
    } else if (b == 0x80 || b == 0xA0 || b >= 0xFD) {
      shiftJis = false;
    } else if (b >= 0x80) {
      loneSigns++;
    }
  }

  /** Signs that logs hold, counted where each single-byte set has them. */
  private void countSigns(int b) {
    switch (b) {
      // degree, micro, superscripts, German, French, Spanish and Italian letters in windows-1252
      case 0xB0,
          0xB5,
          0xB2,
          0xB3,
          0xE4,
          0xF6,
          0xFC,
          0xDF,
          0xC4,
          0xD6,
          0xDC,
          0xE9,
          0xE8,
          0xE0,
          0xF3,
          0xF1,
          0xED,
          0xE1,
          0xEA,
          0xE7 ->
          windowsSigns++;
      // degree, micro, German, French and Spanish letters in CP437
      case 0xF8, 0xE6, 0x84, 0x94, 0x81, 0x8E, 0x99, 0x9A, 0x82, 0x8A, 0x85, 0xA2, 0xA4 ->
          dosSigns++;
      default -> {
        // a sign that tells nothing
      }
    }
    boolean degreeInDos = b == 0xF8 && !Character.isLetter(previous);
    if (degreeInDos) {
      dosSigns++;
    }
  }

  long highBytes() {
    return high;
  }

  boolean validUtf8() {
    return utf8;
  }

  boolean validShiftJis() {
    // Words are made of several characters: pairs must stand side by side.
    return shiftJis && adjacentPairs > 1 && shiftJisPairs > loneSigns;
  }

  boolean looksUtf16Little() {
    return zerosAtOdd > 0.3 * total / 2 && zerosAtEven < 0.05 * total / 2;
  }

  boolean looksUtf16Big() {
    return zerosAtEven > 0.3 * total / 2 && zerosAtOdd < 0.05 * total / 2;
  }

  long windowsSigns() {
    return windowsSigns;
  }

  long dosSigns() {
    return dosSigns;
  }
}
