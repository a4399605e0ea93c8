package org.firnline.logs.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A spreadsheet in the OpenDocument form, .ods. */
public final class OpenDocument {
  /** The file inside that holds the sheets. */
  public static final String MAIN = "content.xml";

  private final Entries entries;

  /** A spreadsheet made of these files. */
  public OpenDocument(Entries entries) {
    this.entries = entries;
  }

  /**
   * Its sheets in their order.
   *
   * @throws IOException if it is no spreadsheet or broken
   */
  public List<Sheet> sheets() throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    boolean isSpreadsheet = false;
    try (PlainXml xml = new PlainXml(entries.open(MAIN))) {
      while (xml.advance()) {
        isSpreadsheet |= xml.starts("spreadsheet");
        if (isSpreadsheet && xml.starts("table")) {
          int number = sheets.size();
          String name = xml.attribute("name").orElse("sheet " + (number + 1));
          sheets.add(new Sheet(name, () -> new OpenDocumentRows(entries.open(MAIN), number)));
        }
      }
    }
    if (!isSpreadsheet) {
      throw new IOException(
          "it is a document without a spreadsheet; export the log as CSV or .ods");
    }
    return sheets;
  }
}
