package org.firnline.logs.form;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes rows of cells as tab-separated UTF-8 lines that the table reader reads back. */
final class WideTable {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  void row(List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      line.append(i == 0 ? "" : "\t").append(plain(cells.get(i)));
    }
    out.writeBytes(line.append('\n').toString().getBytes(StandardCharsets.UTF_8));
  }

  /** A cell must hold neither tab nor line end, and no leading quote that would open a string. */
  private static String plain(String cell) {
    return cell.replace('\t', ' ').replace('\n', ' ').replace('\r', ' ').replaceFirst("^\"", "'");
  }

  byte[] bytes() {
    return out.toByteArray();
  }
}
