package org.firnline.app;

import org.firnline.app.cli.FirnlineCommand;

/** Entry point of the {@code firnline} command. */
public final class Firnline {
  private Firnline() {}

  /**
   * Runs one command and leaves with its exit code; a served laboratory stays until it is stopped.
   */
  public static void main(String[] arguments) {
    int exitCode = FirnlineCommand.run(arguments);
    if (exitCode != FirnlineCommand.STILL_SERVING) {
      System.exit(exitCode);
    }
  }
}
