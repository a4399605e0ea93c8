package org.firnline.app.reading;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.store.KeptRun;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.store.RawFile;
import org.firnline.app.store.RawFiles;
import org.firnline.app.store.RunSummary;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.firnline.review.Finding;
import org.firnline.review.PlannedStep;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;
import org.springframework.stereotype.Service;

/** Reads kept logs and reviews runs. */
@Service
public class ReviewedRuns {
  private static final int READINGS_KEPT = 6;
  private static final int REVIEWS_KEPT = 64;

  private final RawFiles files;
  private final KeptRuns runs;
  private final KeptPlans plans;
  private final ZoneId zone;
  private final LogReader reader = new LogReader();
  private final Reviewer reviewer = new Reviewer();
  private final LatestAnswers<ToRead, Reading> readings = new LatestAnswers<>(READINGS_KEPT);
  private final LatestAnswers<Asked, Review> reviews = new LatestAnswers<>(REVIEWS_KEPT);

  private record Asked(
      String sha256,
      Map<String, String> choices,
      OptionalDouble criticalTemperature_K,
      OptionalLong planId) {}

  private record ToRead(String sha256, Map<String, String> choices) {}

  ReviewedRuns(RawFiles files, KeptRuns runs, KeptPlans plans, ZoneId zone) {
    this.plans = plans;
    this.zone = zone;
    this.files = files;
    this.runs = runs;
  }

  /** How a kept file reads. */
  public Reading read(RawFile file) {
    return readings.get(new ToRead(file.sha256(), file.choices()), () -> freshReading(file));
  }

  /** A run with its review; empty when there is no such run or it has no log yet. */
  public Optional<ReviewedRun> find(long runId) {
    return runs.find(runId).flatMap(this::review);
  }

  /** A run with its review; empty while it has no log. */
  public Optional<ReviewedRun> review(KeptRun run) {
    if (run.logFileId().isEmpty()) {
      return Optional.empty();
    }
    RawFile file = files.find(run.logFileId().getAsLong()).orElseThrow();
    Reading reading = read(file);
    Optional<Review> review =
        reading
            .log()
            .map(
                log ->
                    reviews.get(
                        new Asked(
                            file.sha256(),
                            file.choices(),
                            run.criticalTemperature_K(),
                            run.planId()),
                        () -> freshReview(run, log)));
    return Optional.of(new ReviewedRun(run, file, reading, review));
  }

  /** Reviews a run and leaves the outcome in a line for the lists. */
  private Review freshReview(KeptRun run, Log log) {
    Review review = reviewer.review(log, context(run));
    boolean known = log.basis().startKnown();
    Optional<Finding> worst =
        review.findings().stream()
            .filter(finding -> finding.severity() != Finding.Severity.INFORMATION)
            .findFirst();
    runs.summarize(
        run.id(),
        new RunSummary(
            known ? log.start() : Optional.empty(),
            known ? log.end() : Optional.empty(),
            worst.map(ReviewedRuns::state).orElse("pass"),
            worst.map(finding -> finding.kind().label()).orElse("")));
    return review;
  }

  private static String state(Finding finding) {
    return finding.severity() == Finding.Severity.ALARM ? "stop" : "watch";
  }

  private ReviewContext context(KeptRun run) {
    List<PlannedStep> steps =
        run.planId().stream()
            .mapToObj(plans::find)
            .flatMap(Optional::stream)
            .flatMap(plan -> AnsweredPlan.of(plan.title(), plan.yaml()).answer().stream())
            .findFirst()
            .map(PlannedSteps::of)
            .orElse(List.of());
    return new ReviewContext(run.criticalTemperature_K(), steps);
  }

  private Reading freshReading(RawFile file) {
    try (InputStream content = files.open(file)) {
      return reader.read(
          file.originalName(), content.readAllBytes(), ChosenReading.of(file.choices(), zone));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
