package org.firnline.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import java.util.concurrent.Callable;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.Occasion;
import org.firnline.app.store.database.StoreAddress;
import org.firnline.app.store.keeping.Restore;
import org.firnline.app.store.keeping.Verdict;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline restore}: a laboratory from its backup, into an empty folder. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description = {
      "Puts a backup into an empty or new folder and verifies every file, table and entry of",
      "the audit; nothing is kept of a backup that was altered."
    })
final class RestoreCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "The backup.")
  private Path file = Path.of("");

  @Option(
      names = "--data",
      paramLabel = "DIR",
      required = true,
      description = "The folder the laboratory is put in; empty or new.")
  private Path data = Path.of("");

  RestoreCommand() {}

  @Override
  public Integer call() throws IOException {
    GivenFile.mustExist(file);
    Verdict verdict;
    try {
      verdict = Restore.into(file, data);
    } catch (IllegalArgumentException e) {
      throw new BadInput("Nothing was restored: " + e.getMessage());
    }
    DataFolder folder = new DataFolder(data);
    Occasion terminal = new Occasion(System.getProperty("user.name", "unknown"), "command", "");
    try (OpenStore store =
        new OpenStore(
            folder,
            StoreAddress.file(folder.database()),
            () -> terminal,
            Clock.system(ZoneId.systemDefault()))) {
      store
          .changes()
          .note(
              Action.RESTORE,
              "laboratory",
              GivenFile.name(file),
              Map.of("hash", verdict.lastHash()));
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println("Restored into " + data + " and verified.");
    out.printf(
        "Read: %d entries of the audit, %d tables, %d raw files, %d series.%n",
        verdict.entries(), verdict.rows(), verdict.files(), verdict.series());
    out.flush();
    return FirnlineCommand.FINE;
  }
}
