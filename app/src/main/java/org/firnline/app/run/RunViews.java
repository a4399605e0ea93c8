package org.firnline.app.run;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.PlanFileReader;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.app.run.RunView.EndpointRow;
import org.firnline.app.run.RunView.FindingRow;
import org.firnline.app.run.RunView.Judged;
import org.firnline.app.run.RunView.PhaseRow;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.Shown;
import org.firnline.logs.Log;
import org.firnline.review.Endpoint;
import org.firnline.review.Finding;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Turns a reviewed run into the words of its page. */
@Component
class RunViews {
  private final KeptDryers dryers;
  private final KeptPlans plans;
  private final RunPicture picture;
  private final Accounts accounts;
  private final Shown shown;
  private final MessageSource words;

  RunViews(
      KeptDryers dryers,
      KeptPlans plans,
      RunPicture picture,
      Accounts accounts,
      Shown shown,
      MessageSource words) {
    this.dryers = dryers;
    this.plans = plans;
    this.picture = picture;
    this.accounts = accounts;
    this.shown = shown;
    this.words = words;
  }

  /** The page of a run whose log could be read. */
  RunView of(ReviewedRun run, Log log, Refused refused, Locale locale) {
    Review review = run.review().orElseThrow();
    Instant start = log.start().orElse(Instant.EPOCH);
    LogClock clock = new LogClock(start, log.basis().startKnown(), shown);
    List<FindingRow> findings = findings(review, clock);
    return new RunView(
        run.run().id(),
        run.run().title(),
        dryers.find(run.run().dryerId()).map(KeptDryer::name).orElse(""),
        log.basis().startKnown()
            ? shown.span(start, log.end().orElse(start))
            : words.getMessage(
                "run.start-unknown",
                new Object[] {Shown.duration(log.time().duration_s())},
                locale),
        run.file(),
        summary(log, review, locale),
        picture.json(run, log, findings, planned(run, review), locale),
        RunTable.of(log, clock),
        findings,
        review.endpoints().stream().map(endpoint -> endpoint(endpoint, clock, locale)).toList(),
        review.phases().stream().map(phase -> phase(phase, clock)).toList(),
        accounts.of(
            run.reading(),
            refused.answers().isEmpty() ? run.file().choices() : refused.answers(),
            refused.choices(),
            locale),
        judged(run, review, refused));
  }

  /** The bands of the plan the run followed, once primary drying can be placed in the log. */
  private Optional<PlannedBands> planned(ReviewedRun run, Review review) {
    Optional<Instant> primary =
        review.phases().stream()
            .filter(phase -> phase.name() == Phase.Name.PRIMARY_DRYING)
            .map(Phase::start)
            .findFirst();
    if (run.run().planId().isEmpty() || primary.isEmpty()) {
      return Optional.empty();
    }
    return plans
        .find(run.run().planId().getAsLong())
        .flatMap(plan -> AnsweredPlan.of(plan.title(), plan.yaml()).answer())
        .map(answer -> new PlannedBands(answer, primary.get(), words));
  }

  /** The critical temperature a plan works with. */
  OptionalDouble criticalTemperature_K(long planId) {
    return plans
        .find(planId)
        .flatMap(plan -> new PlanFileReader().read(plan.title(), plan.yaml()).input())
        .map(input -> input.load().product().critical().temperature().best())
        .map(OptionalDouble::of)
        .orElseGet(OptionalDouble::empty);
  }

  private Judged judged(ReviewedRun run, Review review, Refused refused) {
    String limit =
        refused
            .limit()
            .orElseGet(
                () ->
                    run.run().criticalTemperature_K().isPresent()
                        ? shown.celsius(run.run().criticalTemperature_K().getAsDouble())
                        : "");
    return new Judged(
        limit,
        review.criticalTemperatureSource(),
        run.run().planId().isPresent()
            ? Optional.of(run.run().planId().getAsLong())
            : Optional.empty(),
        plans.list(),
        dryers.list(),
        run.run().dryerId(),
        refused.limit().map(typed -> refused.limitProblem()));
  }

  private List<FindingRow> findings(Review review, LogClock clock) {
    List<FindingRow> rows = new ArrayList<>();
    for (Finding finding : review.findings()) {
      rows.add(
          new FindingRow(
              rows.size() + 1,
              state(finding.severity()),
              finding.kind().label(),
              finding.start(),
              finding.end(),
              clock.span(finding.start(), finding.end()),
              finding.text(),
              finding.causes(),
              finding.nextTime(),
              finding.evidence().stream().map(seen -> seen.channel() + ": " + seen.seen()).toList(),
              finding.confidence().label()));
    }
    return List.copyOf(rows);
  }

  private static String state(Finding.Severity severity) {
    return switch (severity) {
      case ALARM -> "stop";
      case WATCH -> "watch";
      case INFORMATION -> "noted";
    };
  }

  private EndpointRow endpoint(Endpoint endpoint, LogClock clock, Locale locale) {
    String load = words.getMessage("run.endpoint.load", null, locale);
    String notReached = words.getMessage("run.endpoint.not-reached", null, locale);
    return new EndpointRow(
        endpoint.vessel().orElse(load),
        endpoint.method().label(),
        endpoint.at().map(clock::moment).orElse(notReached),
        endpoint
            .low()
            .flatMap(low -> endpoint.high().map(high -> clock.span(low, high)))
            .orElse(""),
        endpoint.confidence().label(),
        endpoint.note());
  }

  private static PhaseRow phase(Phase phase, LogClock clock) {
    return new PhaseRow(
        phase.name().label(),
        clock.moment(phase.start()),
        Shown.duration(phase.duration_s()),
        phase.confidence().label(),
        phase.reason());
  }

  private String summary(Log log, Review review, Locale locale) {
    return words.getMessage(
        "run.summary",
        new Object[] {
          log.channels().size(),
          Shown.duration(log.time().duration_s()),
          review.phases().size(),
          review.findings().size()
        },
        locale);
  }
}
