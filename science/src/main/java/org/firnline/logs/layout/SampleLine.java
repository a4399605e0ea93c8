package org.firnline.logs.layout;

import java.nio.charset.Charset;
import org.firnline.logs.text.Cells;

/** One line from the head of a file, kept for deciding the layout. */
public final class SampleLine {
  private final long number;
  private final byte[] bytes;
  private final Charset charset;

  /**
   * Keeps a line.
   *
   * @param number line number, from 1
   * @param bytes its bytes, line end left out; not copied
   * @param charset their character set
   */
  public SampleLine(long number, byte[] bytes, Charset charset) {
    this.number = number;
    this.bytes = bytes;
    this.charset = charset;
  }

  /** Line number, from 1. */
  public long number() {
    return number;
  }

  /** The line as text. */
  public String text() {
    return new String(bytes, charset);
  }

  /** Whether the line holds nothing but blanks. */
  public boolean isBlank() {
    for (byte b : bytes) {
      if (b > ' ' || b < 0) {
        return false;
      }
    }
    return true;
  }

  /** Splits the line with a splitter. */
  void splitWith(Cells cells) {
    cells.split(bytes, 0, bytes.length);
  }

  /** Character set of the line's bytes. */
  public Charset charset() {
    return charset;
  }

  /** Number of tab-separated cells. */
  public int tabbedCells() {
    int cells = 1;
    for (byte b : bytes) {
      cells += b == '\t' ? 1 : 0;
    }
    return cells;
  }

  /** The same line with empty tab-separated cells behind it, up to a number of cells. */
  public SampleLine paddedTo(int cells) {
    int missing = Math.max(0, cells - tabbedCells());
    byte[] longer = java.util.Arrays.copyOf(bytes, bytes.length + missing);
    java.util.Arrays.fill(longer, bytes.length, longer.length, (byte) '\t');
    return new SampleLine(number, longer, charset);
  }

  /** The same line without the sign that makes it a remark. */
  SampleLine withoutRemarkSign() {
    int from = 0;
    while (from < bytes.length
        && (bytes[from] == '#' || bytes[from] == '/' || bytes[from] == ' ')) {
      from++;
    }
    boolean remark = from > 0 && (bytes[0] == '#' || bytes[0] == '/');
    return remark
        ? new SampleLine(number, java.util.Arrays.copyOfRange(bytes, from, bytes.length), charset)
        : this;
  }
}
