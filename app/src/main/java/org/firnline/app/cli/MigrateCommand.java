package org.firnline.app.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.audit.Occasion;
import org.firnline.app.store.database.StoreAddress;
import org.firnline.app.store.keeping.Relocation;
import org.firnline.app.store.keeping.Verdict;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code firnline migrate}: the database of a laboratory moves to another one. */
@Command(
    name = "migrate",
    mixinStandardHelpOptions = true,
    description = {
      "Copies the laboratory's database into an empty one and compares both row by row.",
      "Raw files stay in the data folder; the database that is left stays as it was.",
      "Stop the served laboratory first: what is written after the copy would be left behind."
    })
final class MigrateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private LaboratoryOption laboratory = new LaboratoryOption();

  @Option(
      names = "--to",
      paramLabel = "URL",
      required = true,
      description = "The receiving database: jdbc:postgresql://HOST/NAME?user=…")
  private String to = "";

  MigrateCommand() {}

  @Override
  public Integer call() {
    Verdict verdict;
    String shown;
    try (OpenStore from = laboratory.open()) {
      StoreAddress address = StoreAddress.of(to, from.folder().database());
      shown = address.shown();
      Occasion terminal = new Occasion(System.getProperty("user.name", "unknown"), "command", "");
      try (OpenStore there = new OpenStore(from.folder(), address, () -> terminal, from.clock())) {
        verdict = Relocation.move(from, there);
      }
    } catch (IllegalArgumentException | IllegalStateException e) {
      throw new BadInput("Nothing was moved: " + e.getMessage());
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println("Moved to " + shown + " and compared row by row.");
    out.printf(
        "Read: %d entries of the audit, %d tables, %d raw files, %d series.%n",
        verdict.entries(), verdict.rows(), verdict.files(), verdict.series());
    out.println("Serve it with --store (or FIRNLINE_STORE) naming that database.");
    out.flush();
    return FirnlineCommand.FINE;
  }
}
