package org.firnline.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.CheckWords;
import org.firnline.app.planfile.PlanJson;
import org.firnline.app.planfile.PlanReading;
import org.firnline.app.planfile.PlanReport;
import org.firnline.app.words.Words;
import org.firnline.planning.PlanAnswer;
import org.firnline.planning.Verdict;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline plan}: the answer to a plan file. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Answers a plan file: which hold, how long, what was checked.")
final class PlanCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "The plan file, YAML or JSON.")
  private Path file = Path.of("");

  @Option(names = "--json", description = "Answer in JSON, SI units in the keys.")
  private boolean json;

  PlanCommand() {}

  @Override
  public Integer call() {
    Words words = Words.in(Locale.ENGLISH);
    CheckWords checks = new CheckWords(words);
    AnsweredPlan plan = AnsweredPlan.of(GivenFile.name(file), GivenFile.text(file));
    PrintWriter out = spec.commandLine().getOut();
    if (plan.answer().isEmpty()) {
      refuse(plan.reading());
      return FirnlineCommand.BAD_INPUT;
    }
    PlanAnswer answer = plan.answer().get();
    out.println(
        json
            ? JsonText.of(new PlanJson(checks).answer(plan.reading(), answer))
            : new PlanReport(words, checks).of(plan.reading(), answer));
    out.flush();
    return answer.worst() == Verdict.STOP ? FirnlineCommand.STOP_LINE : FirnlineCommand.FINE;
  }

  private void refuse(PlanReading reading) {
    if (json) {
      PrintWriter out = spec.commandLine().getOut();
      out.println(JsonText.of(PlanJson.problems(reading)));
      out.flush();
    }
    PrintWriter err = spec.commandLine().getErr();
    reading.problems().forEach(problem -> err.println(problem.sentence()));
    err.flush();
  }
}
