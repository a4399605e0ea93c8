package org.firnline.app.store.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder that is gone when the work is done. */
final class Scratch implements AutoCloseable {
  private static final String NAME = ".firnline-scratch-";

  private final Path folder;

  /** Makes one beside what is worked on, and clears away what an interrupted work left there. */
  Scratch(Path beside) throws IOException {
    for (Path old : leftIn(beside)) {
      remove(old);
    }
    folder = Files.createTempDirectory(beside, NAME);
  }

  Path folder() {
    return folder;
  }

  @Override
  public void close() throws IOException {
    remove(folder);
  }

  private static List<Path> leftIn(Path beside) throws IOException {
    try (Stream<Path> files = Files.list(beside)) {
      return files.filter(f -> f.getFileName().toString().startsWith(NAME)).toList();
    }
  }

  private static void remove(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> all;
    try (Stream<Path> files = Files.walk(folder)) {
      all = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : all) {
      Files.deleteIfExists(file);
    }
  }
}
