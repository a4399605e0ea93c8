package org.firnline.app.store;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.springframework.stereotype.Component;

/** A folder of files named by their SHA-256; the same bytes are kept once. */
@Component
class BytesByHash {
  private final DataFolder folder;

  BytesByHash(DataFolder folder) {
    this.folder = folder;
  }

  /**
   * Keeps all bytes of a stream; they are on the disk when this returns.
   *
   * @param content read to its end, not closed
   */
  KeptBytes keep(InputStream content) throws IOException {
    Files.createDirectories(folder.rawFiles());
    Path arriving = Files.createTempFile(folder.rawFiles(), "arriving-", ".part");
    try {
      KeptBytes written = write(content, arriving);
      Path kept = pathOf(written.sha256());
      if (!Files.exists(kept)) {
        moveInPlace(arriving, kept);
      }
      return written;
    } finally {
      Files.deleteIfExists(arriving);
    }
  }

  /**
   * Opens kept bytes.
   *
   * @param name what people call them, for the message if they are gone
   */
  InputStream open(String sha256, String name) throws IOException {
    Path kept = pathOf(sha256);
    if (!Files.exists(kept)) {
      throw new FileNotFoundException("kept file " + name + " is missing from " + kept.getParent());
    }
    return Files.newInputStream(kept);
  }

  private Path pathOf(String sha256) {
    return folder.rawFile(sha256);
  }

  private static KeptBytes write(InputStream content, Path target) throws IOException {
    MessageDigest digest = sha256();
    try (FileChannel channel = FileChannel.open(target, StandardOpenOption.WRITE);
        OutputStream out = new DigestOutputStream(Channels.newOutputStream(channel), digest)) {
      long size_bytes = content.transferTo(out);
      channel.force(true);
      return new KeptBytes(HexFormat.of().formatHex(digest.digest()), size_bytes);
    }
  }

  private static void moveInPlace(Path from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to);
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
