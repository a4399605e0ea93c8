package org.firnline.logs.form;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.firnline.logs.text.ByteSource;

/**
 * Unpacks gzip files and zip files with one log in them, within limits: a small file that would
 * grow without end is refused.
 */
public final class Unpacking {
  /** Plain logs pack to a tenth or so; a hundredfold growth beyond this size is no log. */
  private static final long FREE_BYTES = 64L << 20;

  private static final long MOST_BYTES = 1L << 30;
  private static final int MOST_GROWTH = 200;

  /** The first entry of the two common workbook forms. */
  private static final Set<String> WORKBOOK_STARTS = Set.of("[Content_Types].xml", "mimetype");

  private Unpacking() {}

  /** Whether the first bytes are those of a gzip or zip file. */
  public static boolean isPacked(ByteSource source) throws IOException {
    byte[] head = head(source);
    return isGzip(head) || isZip(head);
  }

  /**
   * The unpacked bytes of a packed file.
   *
   * @throws IOException if it cannot be unpacked, holds no file, or grows beyond the limits
   */
  public static byte[] unpack(ByteSource source) throws IOException {
    try (InputStream in = source.open()) {
      if (isGzip(head(source))) {
        return limited(new GZIPInputStream(in), packedSize(source));
      }
      ZipInputStream zip = new ZipInputStream(in);
      ZipEntry entry = zip.getNextEntry();
      while (entry != null && (entry.isDirectory() || entry.getName().startsWith("__MACOSX"))) {
        entry = zip.getNextEntry();
      }
      if (entry != null && WORKBOOK_STARTS.contains(entry.getName())) {
        throw new IOException("the file is a spreadsheet workbook; save its sheet as CSV");
      }
      if (entry == null) {
        throw new IOException("the zip file holds no file");
      }
      return limited(zip, packedSize(source));
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
    return Arrays.equals(head, new byte[] {'P', 'K', 3, 4});
  }

  private static long packedSize(ByteSource source) throws IOException {
    try (InputStream in = source.open()) {
      return in.skip(Long.MAX_VALUE);
    }
  }

  private static byte[] limited(InputStream in, long packed) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    long total = 0;
    int got = in.read(buffer);
    while (got >= 0) {
      total += got;
      boolean bomb = total > FREE_BYTES && total > MOST_GROWTH * packed;
      if (bomb || total > MOST_BYTES) {
        throw new IOException(
            "unpacking stops at " + (total >> 20) + " MiB: more than a packed log can hold");
      }
      out.write(buffer, 0, got);
      got = in.read(buffer);
    }
    return out.toByteArray();
  }
}
