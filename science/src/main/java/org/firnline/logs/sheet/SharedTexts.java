package org.firnline.logs.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/** The texts that cells of a workbook refer to by number. */
final class SharedTexts {
  private static final int MOST_TEXTS = 2_000_000;
  private static final long MOST_SIGNS = 64L << 20;

  private final List<String> texts;

  private SharedTexts(List<String> texts) {
    this.texts = texts;
  }

  static SharedTexts none() {
    return new SharedTexts(List.of());
  }

  /**
   * Reads them all.
   *
   * @throws IOException if they are broken or more than a log has
   */
  static SharedTexts read(InputStream in) throws IOException {
    List<String> texts = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    long signs = 0;
    boolean inside = false;
    try (PlainXml xml = new PlainXml(in)) {
      while (xml.advance()) {
        if (xml.starts("si")) {
          text.setLength(0);
        } else if (xml.starts("t")) {
          inside = true;
        } else if (xml.ends("t")) {
          inside = false;
        } else if (xml.ends("si")) {
          signs += text.length();
          if (texts.size() == MOST_TEXTS || signs > MOST_SIGNS) {
            throw new IOException("the workbook holds more text than a log can");
          }
          texts.add(text.toString());
        } else if (inside) {
          xml.appendText(text);
        }
      }
    }
    return new SharedTexts(texts);
  }

  /** The text of a number as written in a cell; empty if there is none. */
  String at(String number) {
    boolean whole = number.matches("\\d{1,9}");
    int index = whole ? Integer.parseInt(number) : -1;
    return index >= 0 && index < texts.size() ? texts.get(index) : "";
  }
}
