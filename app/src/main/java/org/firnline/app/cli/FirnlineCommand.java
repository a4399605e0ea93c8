package org.firnline.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The {@code firnline} command: everything else is a word behind it. */
@Command(
    name = "firnline",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Plans, reviews and records freeze-drying runs.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      DemoCommand.class,
      ServeCommand.class,
      PlanCommand.class,
      ReviewCommand.class,
      LearnCommand.class,
      CareCommand.class,
      SolveCommand.class,
      ExplainCommand.class,
      VerifyCommand.class,
      BackupCommand.class,
      RestoreCommand.class,
      MigrateCommand.class
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:fine",
      "1:finished, and the answer holds a stop line",
      "2:the input could not be used; the message says why",
      "3:a fault inside Firnline"
    })
public final class FirnlineCommand implements Runnable {
  /** Fine. */
  public static final int FINE = 0;

  /** Finished, and the answer holds a stop line. */
  public static final int STOP_LINE = 1;

  /** The input could not be used. */
  public static final int BAD_INPUT = 2;

  /** A fault inside Firnline. */
  public static final int FAULT = 3;

  /** Not an exit code: the web application keeps running. */
  public static final int STILL_SERVING = -1;

  @Spec private CommandSpec spec = CommandSpec.create();

  FirnlineCommand() {}

  /** Runs one command line and gives its exit code. */
  public static int run(String... arguments) {
    Journal.onlyErrors();
    return commandLine().execute(arguments);
  }

  static CommandLine commandLine() {
    return new CommandLine(new FirnlineCommand())
        .addSubcommand(AskCommand.commandLine())
        .setExecutionExceptionHandler(FirnlineCommand::explain)
        .setCaseInsensitiveEnumValuesAllowed(true);
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to do: a command is missing.");
  }

  private static int explain(
      Exception fault, CommandLine command, CommandLine.ParseResult arguments) {
    PrintWriter out = command.getErr();
    if (fault instanceof BadInput badInput) {
      out.println(badInput.getMessage());
      return BAD_INPUT;
    }
    out.println("Firnline has a fault; nothing was changed. Please report what follows.");
    fault.printStackTrace(out);
    return FAULT;
  }
}
