package org.firnline.app.cli;

import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.audit.Occasion;
import org.firnline.app.store.database.StoreAddress;
import picocli.CommandLine.Option;

/** Where the database of a laboratory is; mixed into every command that opens one. */
final class StoreOption {
  @Option(
      names = "--store",
      paramLabel = "URL",
      defaultValue = "${env:FIRNLINE_STORE:-}",
      description = {
        "The database: jdbc:postgresql://HOST/NAME?user=… (default: SQLite in the data folder).",
        "FIRNLINE_STORE says it for every command; PGPASSFILE names a file with the password."
      })
  private String store = "";

  StoreOption() {}

  /** As a setting of the web application. */
  Map<String, Object> asSetting(DataFolder folder) {
    address(folder);
    return Map.of("firnline.store", store);
  }

  StoreAddress address(DataFolder folder) {
    try {
      return StoreAddress.of(store, folder.database());
    } catch (IllegalArgumentException e) {
      throw new BadInput(String.valueOf(e.getMessage()));
    }
  }

  /** Opens the laboratory for the person at this terminal. */
  OpenStore open(DataFolder folder) {
    Occasion terminal = new Occasion(System.getProperty("user.name", "unknown"), "command", "");
    return new OpenStore(
        folder, address(folder), () -> terminal, Clock.system(ZoneId.systemDefault()));
  }
}
