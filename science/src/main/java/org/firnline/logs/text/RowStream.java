package org.firnline.logs.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Rows of cells as a stream of tab-separated UTF-8 lines, each made when it is asked for: a table
 * of any length passes through little memory.
 */
public final class RowStream extends InputStream {

  /** Where rows come from. */
  public interface Rows extends AutoCloseable {
    /** The next row; empty at the end. */
    Optional<List<String>> next() throws IOException;

    @Override
    void close() throws IOException;
  }

  private final Rows rows;
  private byte[] line = new byte[0];
  private int at;

  /** A stream over rows; closing it closes them. */
  public RowStream(Rows rows) {
    this.rows = rows;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] target, int offset, int length) throws IOException {
    int filled = 0;
    while (filled < length) {
      if (at == line.length) {
        Optional<List<String>> row = rows.next();
        if (row.isEmpty()) {
          break;
        }
        line = bytes(row.get());
        at = 0;
      }
      int count = Math.min(length - filled, line.length - at);
      System.arraycopy(line, at, target, offset + filled, count);
      at += count;
      filled += count;
    }
    return filled == 0 && length > 0 ? -1 : filled;
  }

  private static byte[] bytes(List<String> cells) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      text.append(i == 0 ? "" : "\t").append(plain(cells.get(i)));
    }
    return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A cell must hold neither tab nor line end, and no leading quote that would open a string. */
  private static String plain(String cell) {
    boolean clean = true;
    for (int i = 0; i < cell.length() && clean; i++) {
      clean = cell.charAt(i) >= ' ' && cell.charAt(i) != '"';
    }
    return clean
        ? cell
        : cell.replace('\t', ' ').replace('\n', ' ').replace('\r', ' ').replaceFirst("^\"", "'");
  }

  @Override
  public void close() throws IOException {
    rows.close();
  }
}
