package org.firnline.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.CheckWords;
import org.firnline.app.planfile.DesignJson;
import org.firnline.app.planfile.DesignWords;
import org.firnline.app.planfile.DesignedPlan;
import org.firnline.app.planfile.HazardWords;
import org.firnline.app.planfile.PlanJson;
import org.firnline.app.planfile.PlanReading;
import org.firnline.app.planfile.PlanReport;
import org.firnline.app.planfile.PlanSchema;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.planning.Verdict;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tools.jackson.databind.node.ObjectNode;

/** {@code firnline plan}: the answer to a plan file. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Answers a plan file: which hold, how long, what was checked.")
final class PlanCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", arity = "0..1", description = "The plan file, YAML or JSON.")
  private @Nullable Path file;

  @Option(names = "--json", description = "Answer in JSON, SI units in the keys.")
  private boolean json;

  @Option(names = "--schema", description = "Print the JSON Schema of plan files and stop.")
  private boolean schema;

  PlanCommand() {}

  @Override
  public Integer call() {
    PrintWriter terminal = spec.commandLine().getOut();
    if (schema) {
      terminal.println(JsonText.of(PlanSchema.schema()));
      terminal.flush();
      return FirnlineCommand.FINE;
    }
    if (file == null) {
      throw new ParameterException(spec.commandLine(), "Say which plan file: FILE is missing.");
    }
    return answer(file);
  }

  private int answer(Path given) {
    Words words = Words.in(Locale.ENGLISH);
    AnsweredPlan plan = AnsweredPlan.of(GivenFile.name(given), GivenFile.text(given));
    if (plan.reading().input().isEmpty()) {
      refuse(plan.reading());
      return FirnlineCommand.BAD_INPUT;
    }
    DesignedPlan design = DesignedPlan.of(plan.reading().input().get());
    PrintWriter out = spec.commandLine().getOut();
    out.println(json ? asJson(plan, design, words) : asText(plan, design, words));
    out.flush();
    boolean stop =
        plan.answer().map(found -> found.worst() == Verdict.STOP).orElse(!design.isFound());
    return stop ? FirnlineCommand.STOP_LINE : FirnlineCommand.FINE;
  }

  private static String asJson(AnsweredPlan plan, DesignedPlan design, Words words) {
    PlanJson answers = new PlanJson(new CheckWords(words));
    ObjectNode json = answers.answer(plan);
    new DesignJson(new HazardWords(words)).add(json, design);
    return JsonText.of(json);
  }

  private static String asText(AnsweredPlan plan, DesignedPlan design, Words words) {
    List<String> lines = new ArrayList<>();
    PlanReport report = new PlanReport(words, new CheckWords(words));
    lines.add(report.of(plan));
    lines.add("");
    lines.addAll(new DesignWords(words, new Shown(ZoneOffset.UTC, words)).report(design));
    lines.addAll(report.assumptions(plan.reading()));
    return Quantities.plain(String.join(System.lineSeparator(), lines));
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
