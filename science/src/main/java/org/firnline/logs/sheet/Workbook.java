package org.firnline.logs.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A workbook in the .xlsx form. */
public final class Workbook {
  /** The file inside that says which sheets there are. */
  public static final String MAIN = "xl/workbook.xml";

  private static final String RELATIONS = "xl/_rels/workbook.xml.rels";
  private static final String TEXTS = "xl/sharedStrings.xml";
  private static final String STYLES = "xl/styles.xml";

  private final Entries entries;

  /** A workbook made of these files. */
  public Workbook(Entries entries) {
    this.entries = entries;
  }

  /** Its sheets in their order, hidden ones left out. */
  public List<Sheet> sheets() throws IOException {
    Map<String, String> targets = targets();
    SharedTexts texts =
        entries.holds(TEXTS) ? SharedTexts.read(entries.open(TEXTS)) : SharedTexts.none();
    CellStyles styles =
        entries.holds(STYLES) ? CellStyles.read(entries.open(STYLES)) : CellStyles.none();
    List<Sheet> sheets = new ArrayList<>();
    boolean from1904 = false;
    try (PlainXml xml = new PlainXml(entries.open(MAIN))) {
      while (xml.advance()) {
        if (xml.starts("workbookPr")) {
          from1904 =
              xml.attribute("date1904").filter(v -> v.equals("1") || v.equals("true")).isPresent();
        } else if (xml.starts("sheet")
            && xml.attribute("state").orElse("visible").equals("visible")) {
          String path = targets.getOrDefault(xml.attribute("id").orElse(""), "");
          if (entries.holds(path)) {
            SheetCells cells = new SheetCells(texts, styles, from1904);
            String name = xml.attribute("name").orElse("sheet " + (sheets.size() + 1));
            sheets.add(new Sheet(name, () -> new WorkbookRows(entries.open(path), cells)));
          }
        }
      }
    }
    return sheets;
  }

  private Map<String, String> targets() throws IOException {
    Map<String, String> targets = new HashMap<>();
    if (!entries.holds(RELATIONS)) {
      return targets;
    }
    try (PlainXml xml = new PlainXml(entries.open(RELATIONS))) {
      while (xml.advance()) {
        if (xml.starts("Relationship")) {
          String target = xml.attribute("Target").orElse("");
          String path = target.startsWith("/") ? target.substring(1) : "xl/" + target;
          targets.put(xml.attribute("Id").orElse(""), path);
        }
      }
    }
    return targets;
  }
}
