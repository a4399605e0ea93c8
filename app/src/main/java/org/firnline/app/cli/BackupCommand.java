package org.firnline.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.keeping.Backup;
import org.firnline.app.store.keeping.BackupReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline backup}: one file that holds the whole laboratory, proven by restoring it. */
@Command(
    name = "backup",
    mixinStandardHelpOptions = true,
    description = {
      "Copies a laboratory into one file, also while it is served, restores that file into a",
      "scratch folder and compares. A file that has its name has passed."
    })
final class BackupCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private LaboratoryOption laboratory = new LaboratoryOption();

  @Parameters(paramLabel = "DIR", description = "The folder that the backup is put in.")
  private Path target = Path.of("");

  BackupCommand() {}

  @Override
  public Integer call() throws IOException {
    BackupReport report;
    try (OpenStore store = laboratory.open()) {
      report = Backup.of(store).make(target);
      store
          .changes()
          .note(
              Action.BACKUP,
              "laboratory",
              String.valueOf(report.file().getFileName()),
              Map.of("auditEntries", Long.toString(report.auditEntries())));
    } catch (IllegalArgumentException | IllegalStateException e) {
      throw new BadInput("No backup was made: " + e.getMessage());
    }
    PrintWriter out = spec.commandLine().getOut();
    out.printf("%s (%d bytes)%n", report.file(), report.size_bytes());
    out.printf(
        "Restored into a scratch folder and compared: %d rows, %d raw files, %d entries of the"
            + " audit.%n",
        report.rows(), report.files(), report.auditEntries());
    out.println("Hash of the last entry: " + report.auditHash());
    out.flush();
    return FirnlineCommand.FINE;
  }
}
