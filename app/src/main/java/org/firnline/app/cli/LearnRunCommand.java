package org.firnline.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.firnline.app.library.runlesson.RunLessonJson;
import org.firnline.app.library.runlesson.RunLessonReport;
import org.firnline.app.library.runlesson.RunLessons;
import org.firnline.app.planfile.PlanFileReader;
import org.firnline.app.planfile.PlanInput;
import org.firnline.app.planfile.PlanReading;
import org.firnline.app.words.Words;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline learn run}: heat transfer and cake resistance from a log. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    description = {
      "Heat transfer and cake resistance of the probed vessels of a run.",
      "The plan's values are what is believed before; its vessel and fill must be those of the run."
    })
final class LearnRunCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "LOG", description = "The log as the dryer wrote it.")
  private Path file = Path.of("");

  @Option(
      names = "--plan",
      required = true,
      paramLabel = "PLAN",
      description = "The plan the run followed.")
  private Path plan = Path.of("");

  @Option(names = "--json", description = "Answer in JSON, SI units in the keys.")
  private boolean json;

  LearnRunCommand() {}

  @Override
  public Integer call() {
    PlanInput input = input();
    Reading reading = new LogReader().read(GivenFile.name(file), GivenFile.bytes(file));
    Log log =
        reading
            .log()
            .orElseThrow(
                () ->
                    new BadInput(
                        String.join(
                            System.lineSeparator(),
                            reading.problems().stream().map(p -> p.sentence()).toList())));
    double limit_K = input.load().product().critical().temperature().best();
    Review review =
        new Reviewer().review(log, new ReviewContext(OptionalDouble.of(limit_K), List.of()));
    RunLessons lessons = RunLessons.of(log, review, input);
    PrintWriter out = spec.commandLine().getOut();
    out.println(
        json
            ? JsonText.of(RunLessonJson.of(lessons))
            : new RunLessonReport(Words.in(Locale.ENGLISH)).of(lessons));
    out.flush();
    return lessons.taught() ? FirnlineCommand.FINE : FirnlineCommand.STOP_LINE;
  }

  private PlanInput input() {
    PlanReading reading = new PlanFileReader().read(GivenFile.name(plan), GivenFile.text(plan));
    return reading
        .input()
        .orElseThrow(
            () ->
                new BadInput(
                    String.join(
                        System.lineSeparator(),
                        reading.problems().stream().map(p -> p.sentence()).toList())));
  }
}
