package org.firnline.logs.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The lines of a file as byte ranges in one reused buffer: no text is made for them. Character sets
 * whose bytes are not a superset of ASCII are turned into UTF-8 on the way.
 */
public final class Lines implements AutoCloseable {
  private static final int BUFFER = 1 << 18;
  private static final int LONGEST_LINE = 1 << 22;

  private final InputStream in;
  private final Charset charset;
  private byte[] buffer = new byte[BUFFER];
  private int filled;
  private int next;
  private boolean ended;
  private int from;
  private int to;
  private long number;
  private boolean terminated;

  private Lines(InputStream in, Charset charset) {
    this.in = in;
    this.charset = charset;
  }

  /** The lines of a source whose encoding is known. */
  public static Lines open(ByteSource source, EncodingVerdict encoding) throws IOException {
    return open(source, encoding, 1);
  }

  /**
   * The lines of a source whose encoding is known.
   *
   * @param firstNumber number of the first line
   */
  public static Lines open(ByteSource source, EncodingVerdict encoding, long firstNumber)
      throws IOException {
    Lines lines = openPlain(source, encoding);
    lines.number = firstNumber - 1;
    return lines;
  }

  private static Lines openPlain(ByteSource source, EncodingVerdict encoding) throws IOException {
    InputStream in = source.open();
    in.skipNBytes(encoding.markLength());
    Charset charset = encoding.charset();
    if (isAsciiSuperset(charset)) {
      return new Lines(in, charset);
    }
    return new Lines(new Utf8Stream(new InputStreamReader(in, charset)), StandardCharsets.UTF_8);
  }

  private static boolean isAsciiSuperset(Charset charset) {
    String name = charset.name();
    return charset.equals(StandardCharsets.UTF_8)
        || charset.equals(StandardCharsets.US_ASCII)
        || name.startsWith("windows-125")
        || name.startsWith("ISO-8859-")
        || name.startsWith("IBM437")
        || name.startsWith("IBM850");
  }

  /** Moves to the next line; false at the end of the file. */
  public boolean advance() throws IOException {
    int scan = next;
    while (true) {
      for (int i = scan; i < filled; i++) {
        byte b = buffer[i];
        if (b == '\n' || b == '\r') {
          if (b == '\r' && i + 1 == filled && !ended) {
            break;
          }
          endLine(i, b == '\r' && i + 1 < filled && buffer[i + 1] == '\n' ? i + 2 : i + 1);
          return true;
        }
      }
      if (ended) {
        if (next >= filled) {
          return false;
        }
        endLine(filled, filled);
        terminated = false;
        return true;
      }
      int pending = filled - next;
      if (pending > LONGEST_LINE) {
        endLine(filled, filled);
        return true;
      }
      refill();
      scan = pending > 0 && buffer[pending - 1] == '\r' ? pending - 1 : pending;
    }
  }

  private void endLine(int end, int following) {
    from = next;
    to = end;
    next = following;
    number++;
    terminated = true;
  }

  private void refill() throws IOException {
    int pending = filled - next;
    if (next > 0) {
      System.arraycopy(buffer, next, buffer, 0, pending);
    } else if (filled == buffer.length) {
      buffer = Arrays.copyOf(buffer, 2 * buffer.length);
    }
    next = 0;
    filled = pending;
    int got = in.readNBytes(buffer, filled, buffer.length - filled);
    filled += got;
    ended = got == 0 || filled < buffer.length;
  }

  /** The buffer that holds the current line; changes with the next call to {@link #advance}. */
  public byte[] buffer() {
    return buffer;
  }

  /** First byte of the current line. */
  public int from() {
    return from;
  }

  /** One past the last byte of the current line, line end left out. */
  public int to() {
    return to;
  }

  /** Number of the current line, from 1. */
  public long number() {
    return number;
  }

  /** Whether the current line ends with a line end; false only for an unfinished last line. */
  public boolean terminated() {
    return terminated;
  }

  /** Character set of the bytes in the buffer. */
  public Charset charset() {
    return charset;
  }

  /** The current line as text. */
  public String text() {
    return new String(buffer, from, to - from, charset);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }

  /** Turns characters into UTF-8 bytes as they are read. */
  private static final class Utf8Stream extends InputStream {
    private final InputStreamReader reader;
    private final char[] chars = new char[1 << 13];
    private byte[] bytes = new byte[0];
    private int at;
    private char pendingHigh;

    Utf8Stream(InputStreamReader reader) {
      this.reader = reader;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
      while (at == bytes.length) {
        if (!more()) {
          return -1;
        }
      }
      int count = Math.min(length, bytes.length - at);
      System.arraycopy(bytes, at, target, offset, count);
      at += count;
      return count;
    }

    private boolean more() throws IOException {
      int start = 0;
      if (pendingHigh != 0) {
        chars[0] = pendingHigh;
        pendingHigh = 0;
        start = 1;
      }
      int got = reader.read(chars, start, chars.length - start);
      if (got < 0 && start == 0) {
        return false;
      }
      int count = start + Math.max(got, 0);
      if (got > 0 && Character.isHighSurrogate(chars[count - 1])) {
        pendingHigh = chars[--count];
      }
      java.nio.ByteBuffer encoded = StandardCharsets.UTF_8.encode(CharBuffer.wrap(chars, 0, count));
      bytes = new byte[encoded.remaining()];
      encoded.get(bytes);
      at = 0;
      return true;
    }

    @Override
    public void close() throws IOException {
      reader.close();
    }
  }
}
