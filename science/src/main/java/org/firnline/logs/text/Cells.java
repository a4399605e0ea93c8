package org.firnline.logs.text;

import java.nio.charset.Charset;
import java.util.Arrays;

/**
 * Splits one line into cells, as byte ranges. Quotes may hold delimiters; a quote that is never
 * closed is an ordinary character, so that one stray quote cannot swallow a file.
 *
 * <p>For the delimiter space, runs of spaces count as one.
 */
public final class Cells {
  private final byte delimiter;
  private byte[] buffer = new byte[0];
  private int[] starts = new int[64];
  private int[] ends = new int[64];
  private int count;

  /** Splits at a delimiter, one of comma, semicolon, tab, bar and space. */
  public Cells(char delimiter) {
    this.delimiter = (byte) delimiter;
  }

  /** Splits the range of a buffer; the cells refer to it until the next split. */
  public void split(byte[] line, int from, int to) {
    buffer = line;
    count = 0;
    if (delimiter == ' ') {
      splitAtSpaces(line, from, to);
      return;
    }
    int start = from;
    while (start <= to) {
      int first = firstNonBlank(line, start, to);
      int close = first < to && line[first] == '"' ? closingQuote(line, first + 1, to) : -1;
      if (close >= 0) {
        addQuoted(line, first + 1, close);
        start = nextDelimiter(line, close + 1, to) + 1;
      } else {
        int end = nextDelimiter(line, first, to);
        add(first, end);
        start = end + 1;
      }
    }
  }

  private int firstNonBlank(byte[] line, int from, int to) {
    int i = from;
    while (i < to && line[i] == ' ') {
      i++;
    }
    return i;
  }

  private void splitAtSpaces(byte[] line, int from, int to) {
    int i = from;
    while (i < to) {
      while (i < to && line[i] == ' ') {
        i++;
      }
      if (i == to) {
        return;
      }
      int start = i;
      if (line[i] == '"') {
        int close = closingQuote(line, i + 1, to);
        if (close >= 0) {
          addQuoted(line, i + 1, close);
          i = close + 1;
          continue;
        }
      }
      while (i < to && line[i] != ' ') {
        i++;
      }
      add(start, i);
    }
  }

  private int nextDelimiter(byte[] line, int from, int to) {
    int i = from;
    while (i < to && line[i] != delimiter) {
      i++;
    }
    return i;
  }

  /** Position of the closing quote, doubled quotes skipped; -1 if the line has none. */
  private int closingQuote(byte[] line, int from, int to) {
    for (int i = from; i < to; i++) {
      if (line[i] == '"') {
        if (i + 1 < to && line[i + 1] == '"') {
          i++;
        } else if (i + 1 == to || line[i + 1] == delimiter || line[i + 1] == ' ') {
          return i;
        }
      }
    }
    return -1;
  }

  private void addQuoted(byte[] line, int from, int close) {
    add(from, close);
    for (int i = from; i < close; i++) {
      if (line[i] == '"') {
        unescape(from, close);
        return;
      }
    }
  }

  /** Doubled quotes become single ones in place: the range shrinks, the bytes stay ours. */
  private void unescape(int from, int close) {
    byte[] copy = buffer.clone();
    int end = from;
    for (int i = from; i < close; i++) {
      copy[end++] = buffer[i];
      if (buffer[i] == '"') {
        i++;
      }
    }
    buffer = copy;
    ends[count - 1] = end;
  }

  private void add(int start, int end) {
    if (count == starts.length) {
      starts = Arrays.copyOf(starts, 2 * count);
      ends = Arrays.copyOf(ends, 2 * count);
    }
    int from = start;
    int to = end;
    while (from < to && (buffer[from] == ' ' || buffer[from] == '\t' || buffer[from] == 0)) {
      from++;
    }
    while (to > from && (buffer[to - 1] == ' ' || buffer[to - 1] == '\t' || buffer[to - 1] == 0)) {
      to--;
    }
    starts[count] = from;
    ends[count] = to;
    count++;
  }

  /** Number of cells of the current line. */
  public int count() {
    return count;
  }

  /** Buffer that holds the cells. */
  public byte[] buffer() {
    return buffer;
  }

  /** First byte of a cell, blanks around it left out. */
  public int start(int cell) {
    return starts[cell];
  }

  /** One past the last byte of a cell. */
  public int end(int cell) {
    return ends[cell];
  }

  /** Whether a cell holds nothing; also true beyond the last cell. */
  public boolean isEmpty(int cell) {
    return cell >= count || starts[cell] == ends[cell];
  }

  /** A cell as text; empty beyond the last cell. */
  public String text(int cell, Charset charset) {
    return cell >= count
        ? ""
        : new String(buffer, starts[cell], ends[cell] - starts[cell], charset);
  }
}
