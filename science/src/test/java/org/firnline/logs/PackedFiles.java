package org.firnline.logs;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Packs small files for tests. */
public final class PackedFiles {
  private PackedFiles() {}

  /** Names and texts in turn, as a zip archive. */
  public static byte[] zip(String... namesAndTexts) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return zip(files);
  }

  static byte[] zip(Map<String, byte[]> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        out.putNextEntry(new ZipEntry(file.getKey()));
        out.write(file.getValue());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static byte[] gzip(byte[] plain) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(bytes)) {
      out.write(plain);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** A workbook of one sheet in the .xlsx form: shared texts, a date style 1, a clock style 2. */
  public static byte[] workbook(String rows, String sharedTexts) {
    return zip(
        "[Content_Types].xml",
        "<Types/>",
        "xl/workbook.xml",
        "<workbook xmlns:r=\"r\"><workbookPr/><sheets><sheet name=\"Run\" sheetId=\"1\""
            + " r:id=\"rId1\"/></sheets></workbook>",
        "xl/_rels/workbook.xml.rels",
        "<Relationships><Relationship Id=\"rId1\" Target=\"worksheets/sheet1.xml\"/>"
            + "</Relationships>",
        "xl/styles.xml",
        "<styleSheet><numFmts><numFmt numFmtId=\"164\" formatCode=\"dd.mm.yyyy\\ hh:mm:ss\"/>"
            + "</numFmts><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/><xf numFmtId=\"46\"/>"
            + "<xf numFmtId=\"14\"/></cellXfs></styleSheet>",
        "xl/sharedStrings.xml",
        "<sst>" + sharedTexts + "</sst>",
        "xl/worksheets/sheet1.xml",
        "<worksheet><sheetData>" + rows + "</sheetData></worksheet>");
  }

  /** A spreadsheet of one sheet in the .ods form. */
  public static byte[] openDocument(String rows) {
    return zip(
        "mimetype",
        "application/vnd.oasis.opendocument.spreadsheet",
        "content.xml",
        "<o:document-content xmlns:o=\"o\" xmlns:t=\"t\" xmlns:x=\"x\"><o:body><o:spreadsheet>"
            + "<t:table t:name=\"Run\">"
            + rows
            + "</t:table></o:spreadsheet></o:body></o:document-content>");
  }
}
