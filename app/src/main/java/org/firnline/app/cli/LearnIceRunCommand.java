package org.firnline.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.firnline.app.library.icerun.IceRunFindings;
import org.firnline.app.library.icerun.IceRunJson;
import org.firnline.app.library.icerun.IceRunReading;
import org.firnline.app.library.icerun.IceRunReport;
import org.firnline.app.library.icerun.IceRunSheet;
import org.firnline.app.words.Words;
import org.firnline.evidence.Problem;
import org.firnline.learning.icerun.IceRunAnswer;
import org.firnline.learning.icerun.IceRunEvaluation;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline learn ice-run}: heat transfer from weighed ice. */
@Command(
    name = "ice-run",
    mixinStandardHelpOptions = true,
    description = {
      "Heat transfer of vessels by their position, from sheets of weighed ice runs.",
      "Runs at three pressures or more give its course with pressure."
    })
final class LearnIceRunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "SHEET",
      arity = "1..*",
      description = "Filled sheets; the page Library, Ice run, gives an empty one.")
  private List<Path> sheets = List.of();

  @Option(names = "--json", description = "Answer in JSON, SI units in the keys.")
  private boolean json;

  LearnIceRunCommand() {}

  @Override
  public Integer call() {
    Words words = Words.in(Locale.ENGLISH);
    List<IceRunAnswer> answers = new ArrayList<>();
    List<String> assumed = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Path sheet : sheets) {
      IceRunReading reading = IceRunSheet.read(GivenFile.name(sheet), GivenFile.text(sheet), words);
      problems.addAll(reading.problems());
      assumed.addAll(reading.assumed());
      reading.run().ifPresent(run -> answers.add(new IceRunEvaluation().evaluate(run)));
    }
    PrintWriter out = spec.commandLine().getOut();
    if (!problems.isEmpty()) {
      refuse(out, problems);
      return FirnlineCommand.BAD_INPUT;
    }
    IceRunFindings findings = IceRunFindings.of(answers);
    out.println(
        json
            ? JsonText.of(IceRunJson.of(findings))
            : new IceRunReport(words).of(findings, assumed.stream().distinct().toList()));
    out.flush();
    return FirnlineCommand.FINE;
  }

  private void refuse(PrintWriter out, List<Problem> problems) {
    if (json) {
      out.println(JsonText.of(IceRunJson.problems(problems)));
      out.flush();
    }
    PrintWriter err = spec.commandLine().getErr();
    problems.forEach(problem -> err.println(problem.sentence()));
    err.flush();
  }
}
