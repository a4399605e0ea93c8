package org.firnline.logs.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.firnline.logs.channel.Confidence;

/**
 * Finds the character set of a file: by its byte order mark, then by whether the bytes are valid
 * UTF-8, then by which single-byte set gives the signs that logs hold (degree sign, micro sign,
 * umlauts).
 */
public final class EncodingFinder {
  private static final int BUFFER = 1 << 16;

  /** Reads the whole stream once and judges. */
  public EncodingVerdict find(InputStream in) throws IOException {
    ByteCensus census = new ByteCensus();
    byte[] buffer = new byte[BUFFER];
    int got = in.readNBytes(buffer, 0, BUFFER);
    EncodingVerdict marked = byMark(buffer, got);
    if (marked != null) {
      return marked;
    }
    while (got > 0) {
      census.count(buffer, got);
      got = in.readNBytes(buffer, 0, BUFFER);
    }
    return byBytes(census);
  }

  private static @org.jspecify.annotations.Nullable EncodingVerdict byMark(byte[] b, int length) {
    if (length >= 3 && b[0] == (byte) 0xEF && b[1] == (byte) 0xBB && b[2] == (byte) 0xBF) {
      return sure(StandardCharsets.UTF_8, 3, "byte order mark of UTF-8");
    }
    if (length >= 2 && b[0] == (byte) 0xFF && b[1] == (byte) 0xFE) {
      return sure(StandardCharsets.UTF_16LE, 2, "byte order mark of UTF-16LE");
    }
    if (length >= 2 && b[0] == (byte) 0xFE && b[1] == (byte) 0xFF) {
      return sure(StandardCharsets.UTF_16BE, 2, "byte order mark of UTF-16BE");
    }
    return null;
  }

  private static EncodingVerdict byBytes(ByteCensus census) {
    if (census.looksUtf16Little()) {
      return probable(StandardCharsets.UTF_16LE, "every second byte is zero");
    }
    if (census.looksUtf16Big()) {
      return probable(StandardCharsets.UTF_16BE, "every second byte is zero");
    }
    if (census.validUtf8()) {
      String reason =
          census.highBytes() == 0 ? "plain ASCII throughout" : "all bytes are valid UTF-8";
      return sure(StandardCharsets.UTF_8, 0, reason);
    }
    if (census.validShiftJis()) {
      return probable(Charset.forName("Shift_JIS"), "byte pairs follow Shift-JIS");
    }
    if (census.dosSigns() > census.windowsSigns()) {
      return probable(
          Charset.forName("IBM437"), "not valid UTF-8; degree signs and umlauts stand as in CP437");
    }
    return probable(
        Charset.forName("windows-1252"),
        "not valid UTF-8; degree signs and umlauts stand as in windows-1252");
  }

  private static EncodingVerdict sure(Charset charset, int markLength, String reason) {
    return new EncodingVerdict(charset, markLength, reason, Confidence.HIGH);
  }

  private static EncodingVerdict probable(Charset charset, String reason) {
    return new EncodingVerdict(charset, 0, reason, Confidence.MEDIUM);
  }
}
