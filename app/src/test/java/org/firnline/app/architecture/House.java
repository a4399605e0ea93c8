package org.firnline.app.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;

/** The main classes of Firnline, read once for all rules, and its drawings. */
final class House {
  /** The classes of the program. */
  static final JavaClasses APP = read("org.firnline.app");

  private House() {}

  /**
   * A drawing of the house.
   *
   * @param name its file name in the folder docs
   */
  static Path drawing(String name) {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("docs").resolve(name))) {
      folder = folder.getParent();
      if (folder == null) {
        throw new IllegalStateException("docs/" + name + " not found above the working folder");
      }
    }
    return folder.resolve("docs").resolve(name);
  }

  private static JavaClasses read(String packageName) {
    return new ClassFileImporter()
        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
        .importPackages(packageName);
  }
}
