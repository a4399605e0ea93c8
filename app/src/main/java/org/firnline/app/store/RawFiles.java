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
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * Keeps raw files byte for byte, named by their SHA-256. The bytes reach the disk before the row
 * that speaks of them is written, so a row never points at half a file.
 */
@Component
public class RawFiles {
  private final DataFolder folder;
  private final RawFileQueries queries;
  private final Clock clock;

  RawFiles(DataFolder folder, RawFileQueries queries, Clock clock) {
    this.folder = folder;
    this.queries = queries;
    this.clock = clock;
  }

  /**
   * Keeps all bytes of a stream.
   *
   * @param content read to its end, not closed
   * @param originalName the name it came with
   * @return the kept file; the earlier one when the same bytes were kept before
   */
  public RawFile keep(InputStream content, String originalName) throws IOException {
    Files.createDirectories(folder.rawFiles());
    Path arriving = Files.createTempFile(folder.rawFiles(), "arriving-", ".part");
    try {
      Written written = write(content, arriving);
      Path kept = pathOf(written.sha256());
      if (!Files.exists(kept)) {
        moveInPlace(arriving, kept);
      }
      if (queries.findBySha256(written.sha256()).isEmpty()) {
        queries.add(
            written.sha256(),
            written.size_bytes(),
            originalName,
            clock.instant().truncatedTo(ChronoUnit.SECONDS));
      }
      return queries.findBySha256(written.sha256()).orElseThrow();
    } finally {
      Files.deleteIfExists(arriving);
    }
  }

  /** The file with this number, if there is one. */
  public Optional<RawFile> find(long id) {
    return queries.find(id);
  }

  /** Kept files that no run uses, newest first. */
  public List<RawFile> listWithoutRun() {
    return queries.listWithoutRun();
  }

  /** Remembers what a person answered about how to read a file. */
  public void choose(RawFile file, Map<String, String> choices) {
    queries.choose(file.id(), choices);
  }

  /** Opens the bytes of a kept file. */
  public InputStream open(RawFile file) throws IOException {
    Path kept = pathOf(file.sha256());
    if (!Files.exists(kept)) {
      throw new FileNotFoundException(
          "raw file " + file.originalName() + " is missing from " + kept.getParent());
    }
    return Files.newInputStream(kept);
  }

  private Path pathOf(String sha256) {
    return folder.rawFile(sha256);
  }

  private record Written(String sha256, long size_bytes) {}

  private static Written write(InputStream content, Path target) throws IOException {
    MessageDigest digest = sha256();
    try (FileChannel channel = FileChannel.open(target, StandardOpenOption.WRITE);
        OutputStream out = new DigestOutputStream(Channels.newOutputStream(channel), digest)) {
      long size_bytes = content.transferTo(out);
      channel.force(true);
      return new Written(HexFormat.of().formatHex(digest.digest()), size_bytes);
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
