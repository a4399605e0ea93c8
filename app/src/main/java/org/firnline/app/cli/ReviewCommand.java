package org.firnline.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.firnline.app.planfile.PlanFileReader;
import org.firnline.app.planfile.PlanInput;
import org.firnline.app.planfile.PlanReading;
import org.firnline.app.reading.PlannedSteps;
import org.firnline.app.reading.ReviewJson;
import org.firnline.app.reading.ReviewReport;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.firnline.planning.PlanAnswer;
import org.firnline.planning.Planner;
import org.firnline.review.Finding;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline review}: what a log says happened. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    description = "Reads any dryer's log and says what happened: phases, ends of drying, findings.")
final class ReviewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "The log as the dryer wrote it.")
  private Path file = Path.of("");

  @Option(
      names = "--plan",
      paramLabel = "FILE",
      description =
          "The plan the run followed: its critical temperature is the limit, its steps are"
              + " compared.")
  private @Nullable Path plan;

  @Option(names = "--json", description = "Answer in JSON, SI units in the keys.")
  private boolean json;

  ReviewCommand() {}

  @Override
  public Integer call() {
    ReviewContext context = context();
    Reading reading = new LogReader().read(GivenFile.name(file), GivenFile.bytes(file));
    Optional<Review> review = reading.log().map(log -> new Reviewer().review(log, context));
    PrintWriter out = spec.commandLine().getOut();
    Shown shown = new Shown(ZoneId.of("UTC"));
    out.println(
        json
            ? JsonText.of(ReviewJson.of(reading, review))
            : new ReviewReport(Words.in(Locale.ENGLISH), shown).of(reading, review));
    out.flush();
    if (review.isEmpty()) {
      return FirnlineCommand.BAD_INPUT;
    }
    boolean stop =
        review.get().findings().stream()
            .anyMatch(finding -> finding.severity() == Finding.Severity.ALARM);
    return stop ? FirnlineCommand.STOP_LINE : FirnlineCommand.FINE;
  }

  private ReviewContext context() {
    if (plan == null) {
      return ReviewContext.none();
    }
    PlanReading reading = new PlanFileReader().read(GivenFile.name(plan), GivenFile.text(plan));
    PlanInput input =
        reading
            .input()
            .orElseThrow(
                () ->
                    new BadInput(
                        String.join(
                            System.lineSeparator(),
                            reading.problems().stream().map(p -> p.sentence()).toList())));
    double limit_K = input.load().product().critical().temperature().best();
    PlanAnswer answer = new Planner().answer(input.question());
    return new ReviewContext(OptionalDouble.of(limit_K), PlannedSteps.of(answer));
  }
}
