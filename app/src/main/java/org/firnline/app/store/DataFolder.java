package org.firnline.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The one folder that holds a laboratory: copy it and you have copied everything.
 *
 * @param root the folder; made when missing
 */
public record DataFolder(Path root) {

  public DataFolder {
    root = root.toAbsolutePath().normalize();
    try {
      Files.createDirectories(root);
    } catch (IOException e) {
      throw new UncheckedIOException("the data folder " + root + " cannot be made", e);
    }
  }

  /** The database file. */
  public Path database() {
    return root.resolve("firnline.db");
  }

  /** The folder of raw files, named by their content. */
  public Path rawFiles() {
    return root.resolve("raw");
  }
}
