package org.firnline.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.firnline.app.solve.CaseFile;
import org.firnline.app.solve.CaseJson;
import org.firnline.app.solve.SolvedCase;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline solve}: the batch door for fully specified cases. */
@Command(
    name = "solve",
    mixinStandardHelpOptions = true,
    description = "Solves fully specified cases; one that cannot be solved says why.")
final class SolveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "The case file, JSON.")
  private Path file = Path.of("");

  @Option(names = "--json", description = "Answer in JSON, the unit in each key.")
  private boolean json;

  SolveCommand() {}

  @Override
  public Integer call() {
    List<SolvedCase> solved = parse().solve();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(CaseJson.write(solved));
    } else {
      solved.forEach(one -> print(out, one));
    }
    out.flush();
    return FirnlineCommand.FINE;
  }

  private CaseFile parse() {
    try {
      return CaseFile.parse(GivenFile.name(file), GivenFile.text(file));
    } catch (InvalidInputException e) {
      throw new BadInput(
          e.problems().stream().map(Problem::sentence).collect(Collectors.joining("\n")));
    }
  }

  private static void print(PrintWriter out, SolvedCase one) {
    out.println(one.id() + " (" + one.kind() + ")");
    one.refusal().ifPresent(reason -> out.println("  refused: " + reason));
    one.answer().forEach((key, value) -> out.println("  " + key + " = " + value));
    out.println();
  }
}
