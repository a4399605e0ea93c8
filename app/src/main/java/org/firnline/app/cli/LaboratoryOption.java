package org.firnline.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.OpenStore;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which laboratory a command works on: its folder and its database. */
final class LaboratoryOption {
  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "The laboratory's folder (default: ${DEFAULT-VALUE}).")
  private Path data = Path.of("firnline-data");

  @Mixin private StoreOption store = new StoreOption();

  LaboratoryOption() {}

  /** Opens a laboratory that exists. */
  OpenStore open() {
    if (!Files.isDirectory(data)) {
      throw new BadInput(data + ": there is no such folder. Name the laboratory with --data.");
    }
    return store.open(new DataFolder(data));
  }
}
