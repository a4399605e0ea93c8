package org.firnline.app.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.firnline.evidence.Explanation;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline explain}: what a reported quantity means and where it comes from. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description = "Says what a reported quantity means: formula, unit, range, source.")
final class ExplainCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "QUANTITY",
      arity = "0..1",
      defaultValue = "",
      description = "A name or key such as max_bottom_K; leave it out to list all.")
  private String quantity = "";

  ExplainCommand() {}

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (quantity.isBlank()) {
      Explanation.all().forEach(one -> out.println(one.quantity() + ": " + one.meaning()));
      out.flush();
      return FirnlineCommand.FINE;
    }
    Explanation one =
        Explanation.find(quantity)
            .orElseThrow(
                () ->
                    new BadInput(
                        "'"
                            + quantity
                            + "' is no quantity Firnline explains. 'firnline explain' lists them."));
    out.println(one.quantity());
    out.println("  meaning  " + one.meaning());
    out.println("  formula  " + one.formula());
    out.println("  unit     " + one.unit());
    out.println("  range    " + one.range());
    out.println("  source   " + one.source());
    out.flush();
    return FirnlineCommand.FINE;
  }
}
