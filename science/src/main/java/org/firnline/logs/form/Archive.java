package org.firnline.logs.form;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.firnline.logs.sheet.Entries;
import org.firnline.logs.text.ByteSource;

/**
 * The files of a zip archive, looked over once. Sizes that an archive declares are not believed;
 * names that lead outside of it are refused although nothing is ever written.
 */
final class Archive implements Entries {
  private static final int MOST_FILES = 500;
  private static final int HEAD_BYTES = 4;

  private final ByteSource source;
  private final long packed;
  private final Map<String, byte[]> heads;

  private Archive(ByteSource source, long packed, Map<String, byte[]> heads) {
    this.source = source;
    this.packed = packed;
    this.heads = heads;
  }

  /**
   * Looks over an archive, unpacking all of it once within the limits.
   *
   * @throws IOException if it is broken, too large, too full, or names a place outside itself
   */
  static Archive open(ByteSource source) throws IOException {
    long packed = Unpacking.sizeOf(source);
    Map<String, byte[]> heads = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(source.open())) {
      MeasuredStream content = new MeasuredStream(zip, packed);
      byte[] buffer = new byte[1 << 16];
      for (ZipEntry entry = next(zip); entry != null; entry = next(zip)) {
        refuseOutside(entry.getName());
        if (heads.size() == MOST_FILES) {
          throw new IOException("the archive holds more than " + MOST_FILES + " files");
        }
        byte[] head = content.readNBytes(HEAD_BYTES);
        if (!entry.isDirectory() && heads.putIfAbsent(entry.getName(), head) != null) {
          throw new IOException("the archive holds " + entry.getName() + " twice");
        }
        while (content.read(buffer, 0, buffer.length) >= 0) {
          // read to its end so that broken or endless files show here
        }
      }
    } catch (IllegalArgumentException e) {
      throw new IOException("a name in the archive cannot be read", e);
    }
    return new Archive(source, packed, heads);
  }

  private static @org.jspecify.annotations.Nullable ZipEntry next(ZipInputStream zip)
      throws IOException {
    return zip.getNextEntry();
  }

  private static void refuseOutside(String name) throws IOException {
    String plain = name.replace('\\', '/');
    boolean climbs = List.of(plain.split("/", -1)).contains("..");
    if (climbs || plain.startsWith("/") || plain.matches("[A-Za-z]:.*")) {
      throw new IOException("the archive names a place outside itself: " + name);
    }
  }

  /** Whether it holds a file of this name. */
  @Override
  public boolean holds(String name) {
    return heads.containsKey(name);
  }

  /** Names of the files that can be logs: no folders, no notes that systems leave behind. */
  List<String> files() {
    return heads.keySet().stream()
        .filter(name -> !name.startsWith("__MACOSX/"))
        .filter(name -> !name.substring(name.lastIndexOf('/') + 1).startsWith("."))
        .toList();
  }

  /** First bytes of a file. */
  byte[] headOf(String name) {
    return heads.getOrDefault(name, new byte[0]).clone();
  }

  /**
   * Opens one file.
   *
   * @throws IOException if there is none of this name
   */
  @Override
  public InputStream open(String name) throws IOException {
    ZipInputStream zip = new ZipInputStream(source.open());
    for (ZipEntry entry = next(zip); entry != null; entry = next(zip)) {
      if (entry.getName().equals(name)) {
        return new MeasuredStream(zip, packed);
      }
    }
    zip.close();
    throw new IOException("the archive holds no " + name);
  }
}
