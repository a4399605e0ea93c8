package org.firnline.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Finds files of this repository from wherever the tests are started. */
final class Repository {
  private Repository() {}

  /**
   * A file or folder of the repository.
   *
   * @param path seen from the root of the repository
   */
  static Path file(String path) {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("docs/architecture.puml"))) {
      folder = folder.getParent();
      if (folder == null) {
        throw new IllegalStateException(
            "docs/architecture.puml not found above the working folder "
                + Path.of("").toAbsolutePath());
      }
    }
    return folder.resolve(path);
  }

  /** The Java files of main code in all modules. */
  static List<Path> mainSources() {
    return Stream.of("science", "app", "bench")
        .map(module -> file(module + "/src/main/java"))
        .filter(Files::isDirectory)
        .flatMap(Repository::javaFiles)
        .toList();
  }

  /** The text of a source file without comments. */
  static String codeOf(Path source) {
    return textOf(source).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)(?<!:)//.*$", "");
  }

  static String textOf(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Stream<Path> javaFiles(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> found = files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
      return found.stream();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
