package org.firnline.logs.form;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.firnline.logs.sheet.OpenDocument;
import org.firnline.logs.sheet.Sheet;
import org.firnline.logs.sheet.Workbook;
import org.firnline.logs.text.ByteSource;
import org.firnline.logs.text.RowStream;

/**
 * Looks into packed files: gzip, zip with one log or several, workbooks. Everything is unpacked
 * while it is read and never written anywhere; an archive that is not what it says is refused with
 * the reason.
 */
public final class Unpacking {
  private static final byte[] OLD_WORKBOOK = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
  private static final byte[] PORTABLE_DOCUMENT = {'%', 'P', 'D', 'F'};

  private Unpacking() {}

  /** Whether the first bytes are those of a file that must be unpacked first. */
  public static boolean isPacked(ByteSource source) throws IOException {
    byte[] head = head(source);
    return isGzip(head)
        || isZip(head)
        || Arrays.equals(head, OLD_WORKBOOK)
        || Arrays.equals(head, PORTABLE_DOCUMENT);
  }

  /**
   * What a packed file holds, in its own order.
   *
   * @param name name of the packed file
   * @throws IOException if it cannot be unpacked, holds nothing, grows beyond the limits, holds
   *     another packed file, or names a place outside itself
   */
  public static List<Part> parts(String name, ByteSource source) throws IOException {
    byte[] head = head(source);
    if (isGzip(head)) {
      return List.of(gzip(name, source));
    }
    if (isZip(head)) {
      Archive archive = Archive.open(source);
      if (archive.holds(Workbook.MAIN)) {
        return sheets(new Workbook(archive).sheets());
      }
      if (archive.holds(OpenDocument.MAIN)) {
        return sheets(new OpenDocument(archive).sheets());
      }
      return files(archive);
    }
    throw new IOException(
        Arrays.equals(head, OLD_WORKBOOK)
            ? "it is an old binary workbook, or one locked by a password; save its sheet as .xlsx,"
                + " .ods or CSV without a password"
            : "it is a page made for printing (PDF); export the log as CSV instead");
  }

  private static Part gzip(String name, ByteSource source) throws IOException {
    long packed = sizeOf(source);
    ByteSource inside =
        () -> new MeasuredStream(new GZIPInputStream(source.open(), 1 << 16), packed);
    refuseNested(head(inside), name);
    return new Part(name, false, inside);
  }

  private static List<Part> files(Archive archive) throws IOException {
    List<Part> parts = new ArrayList<>();
    for (String entry : archive.files()) {
      refuseNested(archive.headOf(entry), entry);
      String plainName = entry.substring(entry.lastIndexOf('/') + 1);
      parts.add(new Part(plainName, false, () -> archive.open(entry)));
    }
    if (parts.isEmpty()) {
      throw new IOException("the zip file holds no file");
    }
    return parts;
  }

  private static List<Part> sheets(List<Sheet> sheets) throws IOException {
    if (sheets.isEmpty()) {
      throw new IOException("the workbook holds no sheet");
    }
    return sheets.stream()
        .map(sheet -> new Part(sheet.name(), true, () -> new RowStream(sheet.rows().open())))
        .toList();
  }

  private static void refuseNested(byte[] head, String name) throws IOException {
    if (isGzip(head) || isZip(head)) {
      throw new IOException(
          name + " is itself a packed file; unpack the outer one and give its files");
    }
  }

  private static byte[] head(ByteSource source) throws IOException {
    try (InputStream in = source.open()) {
      return in.readNBytes(4);
    }
  }

  private static boolean isGzip(byte[] head) {
    return head.length >= 2 && head[0] == (byte) 0x1F && head[1] == (byte) 0x8B;
  }

  private static boolean isZip(byte[] head) {
    return head.length >= 4
        && head[0] == 'P'
        && head[1] == 'K'
        && (head[2] == 3 || head[2] == 5)
        && (head[3] == 4 || head[3] == 6);
  }

  static long sizeOf(ByteSource source) throws IOException {
    try (InputStream in = source.open()) {
      return in.skip(Long.MAX_VALUE);
    }
  }
}
