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

  /** The link that opens a shared laboratory, shown only here. */
  static void invite(CommandSpec spec, String link) {
    PrintWriter out = spec.commandLine().getOut();
    out.println();
    out.println("Nobody can sign in yet. Open this link within two days; it works once:");
    out.println();
    out.println("    " + link);
    out.flush();
  }

  static void warn(CommandSpec spec, String warning) {
    PrintWriter err = spec.commandLine().getErr();
    err.println(warning);
    err.flush();
  }
}
