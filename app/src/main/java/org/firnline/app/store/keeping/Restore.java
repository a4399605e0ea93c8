package org.firnline.app.store.keeping;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.database.Databases;
import org.firnline.app.store.database.StoreAddress;

/** Puts a backup back, into an empty folder only. */
public final class Restore {
  private static final long LARGEST_MANIFEST_BYTES = 512L << 20;

  private Restore() {}

  /**
   * Restores a laboratory and verifies it; nothing is kept of one that is not as it was.
   *
   * @param zip the backup
   * @param target an empty folder, or one that does not exist
   * @return what the verification read
   * @throws IllegalArgumentException if the target is in use or the file is no intact backup
   */
  public static Verdict into(Path zip, Path target) throws IOException {
    mustBeEmpty(target);
    Path parent = target.toAbsolutePath().normalize().getParent();
    Path beside = parent == null ? target.toAbsolutePath() : parent;
    Files.createDirectories(beside);
    try (Scratch scratch = new Scratch(beside)) {
      Path arriving = scratch.folder().resolve("laboratory");
      Verdict verdict = unpack(zip, arriving);
      Files.deleteIfExists(target);
      Files.move(arriving, target, StandardCopyOption.ATOMIC_MOVE);
      return verdict;
    }
  }

  /** Unpacks into a folder and compares every file, every table and the whole audit. */
  static Verdict unpack(Path zip, Path folder) throws IOException {
    try (ZipFile file = new ZipFile(zip.toFile(), StandardCharsets.UTF_8)) {
      Manifest manifest = manifest(file, zip);
      DataFolder laboratory = new DataFolder(folder);
      for (Manifest.StoredFile stored : manifest.files()) {
        unpack(file, stored, laboratory.root());
      }
      return compare(manifest, laboratory, zip);
    } catch (ZipException e) {
      throw new IllegalArgumentException(zip + " is no intact zip file: " + e.getMessage(), e);
    }
  }

  private static Manifest manifest(ZipFile file, Path zip) throws IOException {
    ZipEntry entry = file.getEntry(Manifest.NAME);
    if (entry == null || entry.getSize() > LARGEST_MANIFEST_BYTES) {
      throw new IllegalArgumentException(zip + " is no backup of Firnline: it has no manifest");
    }
    try (InputStream content = file.getInputStream(entry)) {
      return Manifest.ofJson(new String(content.readAllBytes(), StandardCharsets.UTF_8));
    } catch (tools.jackson.core.JacksonException e) {
      throw new IllegalArgumentException(zip + " has a damaged manifest", e);
    }
  }

  private static void unpack(ZipFile file, Manifest.StoredFile stored, Path root)
      throws IOException {
    Path target = root.resolve(stored.path()).normalize();
    ZipEntry entry = file.getEntry(stored.path());
    if (!target.startsWith(root) || entry == null) {
      throw new IllegalArgumentException(
          "the backup lacks " + stored.path() + ", which its manifest names");
    }
    Path parent = target.getParent();
    Files.createDirectories(parent == null ? root : parent);
    try (InputStream content = file.getInputStream(entry)) {
      Files.copy(content, target);
    }
    if (!Verification.sha256(target).equals(stored.sha256())) {
      throw new IllegalArgumentException(
          stored.path() + " in the backup is not what was put in: its SHA-256 differs");
    }
  }

  private static Verdict compare(Manifest manifest, DataFolder laboratory, Path zip) {
    try (HikariDataSource copy = Databases.open(StoreAddress.file(laboratory.database()))) {
      try (Connection connection = copy.getConnection()) {
        List<TableDigest> tables = TableDigest.ofAll(connection);
        for (TableDigest expected : manifest.tables()) {
          if (!tables.contains(expected)) {
            throw new IllegalArgumentException(
                "table " + expected.table() + " in " + zip + " is not what was put in");
          }
        }
      } catch (SQLException e) {
        throw new IllegalArgumentException(zip + " holds no readable database", e);
      }
      Verdict verdict = new Verification(copy, laboratory).verify();
      verdict
          .first()
          .ifPresent(
              problem -> {
                throw new IllegalArgumentException(zip + ": " + problem);
              });
      return verdict;
    }
  }

  private static void mustBeEmpty(Path target) {
    if (!Files.exists(target)) {
      return;
    }
    try (Stream<Path> files = Files.list(target)) {
      if (files.findAny().isPresent()) {
        throw new IllegalArgumentException(
            target + " is not empty. A backup is restored into an empty or new folder only.");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
