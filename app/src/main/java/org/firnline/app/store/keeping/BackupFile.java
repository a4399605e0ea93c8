package org.firnline.app.store.keeping;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.firnline.app.store.DataFolder;

/** Writes the file of a backup; it has reached the disk when the call returns. */
final class BackupFile {
  private BackupFile() {}

  static void write(Path zip, Manifest manifest, Path database, DataFolder folder)
      throws IOException {
    try (FileChannel channel =
            FileChannel.open(zip, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        OutputStream bytes = Channels.newOutputStream(channel);
        ZipOutputStream out = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      out.putNextEntry(new ZipEntry(Manifest.NAME));
      out.write(manifest.json().getBytes(StandardCharsets.UTF_8));
      out.closeEntry();
      for (Manifest.StoredFile file : manifest.files()) {
        out.putNextEntry(new ZipEntry(file.path()));
        boolean isDatabase = file.path().equals(Backup.DATABASE);
        Files.copy(isDatabase ? database : folder.root().resolve(file.path()), out);
        out.closeEntry();
      }
      out.finish();
      channel.force(true);
    }
  }
}
