package org.firnline.app.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code firnline learn}: what small tests and runs teach. */
@Command(
    name = "learn",
    mixinStandardHelpOptions = true,
    description =
        "Turns small tests and runs into values of the dryer, the vessel and the product.",
    synopsisSubcommandLabel = "WHAT",
    subcommands = {LearnIceRunCommand.class})
final class LearnCommand implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  LearnCommand() {}

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to learn from: see the list below.");
  }
}
