package org.firnline.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;

/** The lines printed once pages can be opened. */
final class Started {
  private Started() {}

  static void say(CommandSpec spec, String what, String address) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(what);
    out.println();
    out.println("    " + address);
    out.println();
    out.println("Stop it with Ctrl+C.");
    out.flush();
  }
}
