package org.firnline.logs.table;

import java.util.Arrays;

/** The line of the file each kept row comes from. */
public final class LineNumbers {
  private int[] lines = new int[1024];
  private int size;

  void add(long line) {
    if (size == lines.length) {
      lines = Arrays.copyOf(lines, 2 * size);
    }
    lines[size++] = (int) line;
  }

  /** Number of kept rows. */
  public int size() {
    return size;
  }

  /** Line of a kept row, from 1. */
  public long lineOf(int row) {
    return lines[row];
  }
}
