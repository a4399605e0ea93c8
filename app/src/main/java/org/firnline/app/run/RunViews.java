package org.firnline.app.run;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.PlanFileReader;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.app.run.RunView.Compared;
import org.firnline.app.run.RunView.EndpointRow;
import org.firnline.app.run.RunView.EventRow;
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
  private final RunSentence sentence;
  private final RunEvents events;
  private final RunPapers papers;
  private final OtherRuns others;
  private final Judgements judgements;
  private final Accounts accounts;
  private final Shown shown;
  private final MessageSource words;

  RunViews(
      KeptDryers dryers,
      KeptPlans plans,
      RunPicture picture,
      RunSentence sentence,
      RunEvents events,
      RunPapers papers,
      OtherRuns others,
      Judgements judgements,
      Accounts accounts,
      Shown shown,
      MessageSource words) {
    this.dryers = dryers;
    this.plans = plans;
    this.picture = picture;
    this.sentence = sentence;
    this.events = events;
    this.papers = papers;
    this.others = others;
    this.judgements = judgements;
    this.accounts = accounts;
    this.shown = shown;
    this.words = words;
  }

  /** The page of a run whose log could be read. */
  RunView of(ReviewedRun run, Log log, RunPage.Beside beside, Refused refused, Locale locale) {
    Review review = run.review().orElseThrow();
    Instant start = log.start().orElse(Instant.EPOCH);
    LogClock clock = new LogClock(start, log.basis().startKnown(), shown);
    long id = run.run().id();
    List<FindingRow> findings = new FindingRows(log, clock).of(review.findings());
    List<EventRow> events = this.events.of(log, papers.kept(id), clock, locale);
    Compared compared = compared(run, review, beside, locale);
    RunPicture.Content content =
        new RunPicture.Content(
            findings, events, planned(run, review, compared.planAt()), compared.other());
    return new RunView(
        id,
        run.run().title(),
        dryers.find(run.run().dryerId()).map(KeptDryer::name).orElse(""),
        span(log, start, locale),
        log.basis().startKnown(),
        run.file(),
        sentence.of(log, review, clock, locale),
        picture.json(log, review, content, locale),
        RunTable.of(log, clock),
        findings,
        events,
        papers.notes(id, log, clock, locale),
        papers.attachments(id, locale),
        compared,
        judgements.verdicts(review, clock, locale),
        judgements.steps(review),
        review.endpoints().stream().map(endpoint -> endpoint(endpoint, clock, locale)).toList(),
        review.phases().stream().map(phase -> phase(phase, clock)).toList(),
        accounts.of(
            run.reading(),
            refused.answers().isEmpty() ? run.file().choices() : refused.answers(),
            refused.choices(),
            locale),
        judged(run, review, refused),
        refused);
  }

  private String span(Log log, Instant start, Locale locale) {
    return log.basis().startKnown()
        ? shown.span(start, log.end().orElse(start))
        : words.getMessage(
            "run.start-unknown", new Object[] {Shown.duration(log.time().duration_s())}, locale);
  }

  private Compared compared(ReviewedRun run, Review review, RunPage.Beside beside, Locale locale) {
    String at = beside.at().orElse(Phase.Name.PRIMARY_DRYING.label());
    List<String> phases = review.phases().stream().map(p -> p.name().label()).distinct().toList();
    return new Compared(
        others.choices(run.run().id()),
        phases,
        beside.with().flatMap(id -> others.find(run, id, OtherRuns.phase(at), locale)),
        at,
        beside.planAt().orElse(Phase.Name.PRIMARY_DRYING.label()));
  }

  /** The bands of the plan the run followed, once they can be placed in the log. */
  private Optional<PlannedBands> planned(ReviewedRun run, Review review, String at) {
    Optional<Phase.Name> phase = OtherRuns.phase(at);
    Optional<Instant> begins =
        phase.isEmpty()
            ? run.log().flatMap(Log::start)
            : review.phases().stream()
                .filter(candidate -> candidate.name() == phase.get())
                .map(Phase::start)
                .findFirst();
    if (run.run().planId().isEmpty() || begins.isEmpty()) {
      return Optional.empty();
    }
    return plans
        .find(run.run().planId().getAsLong())
        .flatMap(plan -> AnsweredPlan.of(plan.title(), plan.yaml()).answer())
        .map(answer -> new PlannedBands(answer, begins.get(), words));
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
}
