package org.firnline.app.today;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.app.reading.ReviewedRuns;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.today.TodayRow.Big;
import org.firnline.app.today.TodayRow.Next;
import org.firnline.app.today.TodayRow.RunLink;
import org.firnline.app.today.TodayRow.Worst;
import org.firnline.app.words.Shown;
import org.firnline.logs.Log;
import org.firnline.review.Endpoint;
import org.firnline.review.Finding;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Says for every dryer what it is doing and what a person must do next. */
@Component
class TodayRows {
  /** A log that ended longer ago than this belongs to a run that is over. */
  private static final Duration RUN_IS_OVER = Duration.ofDays(2);

  /** Data is stale after this, or after three intervals of the log. */
  private static final Duration STALE = Duration.ofMinutes(5);

  private final KeptDryers dryers;
  private final KeptRuns runs;
  private final ReviewedRuns reviewed;
  private final PlannedFinish planned;
  private final Shown shown;
  private final MessageSource words;
  private final Clock clock;

  TodayRows(
      KeptDryers dryers,
      KeptRuns runs,
      ReviewedRuns reviewed,
      PlannedFinish planned,
      Shown shown,
      MessageSource words,
      Clock clock) {
    this.dryers = dryers;
    this.runs = runs;
    this.reviewed = reviewed;
    this.planned = planned;
    this.shown = shown;
    this.words = words;
    this.clock = clock;
  }

  List<TodayRow> list(Locale locale) {
    return dryers.list().stream().map(dryer -> row(dryer, locale)).toList();
  }

  private TodayRow row(KeptDryer dryer, Locale locale) {
    Optional<ReviewedRun> latest = runs.findLatest(dryer.id()).flatMap(reviewed::review);
    if (latest.isEmpty() || latest.get().log().isEmpty()) {
      return empty(dryer, locale);
    }
    ReviewedRun run = latest.get();
    Log log = run.log().orElseThrow();
    Review review = run.review().orElseThrow();
    Instant end = log.end().orElse(clock.instant());
    boolean over =
        !log.basis().startKnown()
            || lastPhase(review).map(phase -> phase.name() == Phase.Name.BACKFILL).orElse(true)
            || Duration.between(end, clock.instant()).compareTo(RUN_IS_OVER) > 0;
    return over
        ? finished(dryer, run, log, review, locale)
        : running(dryer, run, log, review, locale);
  }

  private TodayRow empty(KeptDryer dryer, Locale locale) {
    return new TodayRow(
        dryer.name(),
        dryer.description(),
        say("today.doing.nothing-known", locale),
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new Next("", say("today.next.bring-log", locale), "/runs"));
  }

  private TodayRow finished(
      KeptDryer dryer, ReviewedRun run, Log log, Review review, Locale locale) {
    Instant end = log.end().orElse(clock.instant());
    boolean known = log.basis().startKnown();
    Optional<Instant> dry = known ? endOfDrying(review) : Optional.empty();
    return new TodayRow(
        dryer.name(),
        dryer.description(),
        say("today.doing.idle", locale),
        known
            ? say("today.since.finished", locale, shown.ago(end, clock.instant()))
            : say("today.since.unknown", locale),
        Optional.of(link(run)),
        dry.map(at -> new Big(say("today.big.dry", locale), shown.clock(at), shown.day(at))),
        Optional.empty(),
        Optional.empty(),
        Optional.of(worst(review, locale)),
        review.findings().stream().anyMatch(TodayRows::matters)
            ? new Next("", say("today.next.findings", locale), address(run))
            : new Next("", say("today.next.plan", locale), "/plan"));
  }

  private TodayRow running(
      KeptDryer dryer, ReviewedRun run, Log log, Review review, Locale locale) {
    Instant now = clock.instant();
    Instant end = log.end().orElse(now);
    Optional<Phase> phase = lastPhase(review);
    Optional<Instant> dry = endOfDrying(review);
    Optional<PlannedFinish.Finish> finish =
        dry.isPresent() ? Optional.empty() : planned.of(run.run(), review);
    Optional<Big> big =
        dry.map(at -> new Big(say("today.big.dry", locale), shown.clock(at), shown.day(at)))
            .or(() -> finish.map(band -> finish(band, locale)));
    boolean stale = Duration.between(end, now).compareTo(staleAfter(log)) > 0;
    return new TodayRow(
        dryer.name(),
        dryer.description(),
        phase.map(last -> last.name().label()).orElse(say("today.doing.running", locale)),
        phase.map(last -> say("today.since.phase", locale, shown.moment(last.start()))).orElse(""),
        Optional.of(link(run)),
        big,
        finish.map(band -> progress(band, end, locale)),
        stale
            ? Optional.of(say("today.stale", locale, shown.moment(end), shown.ago(end, now)))
            : Optional.empty(),
        Optional.of(worst(review, locale)),
        stale
            ? new Next("", say("today.next.newer-log", locale), "/runs")
            : new Next(
                finish.map(band -> comeBack(band, now, locale)).orElse(""),
                say("today.next.look", locale),
                address(run)));
  }

  private Big finish(PlannedFinish.Finish band, Locale locale) {
    boolean sameDay = shown.date(band.low()).equals(shown.date(band.high()));
    return new Big(
        say("today.big.finish", locale),
        shown.between(shown.clock(band.low()), shown.clock(band.high())),
        sameDay
            ? shown.day(band.high())
            : say("today.big.days", locale, shown.day(band.low()), shown.day(band.high())));
  }

  private TodayRow.Progress progress(PlannedFinish.Finish band, Instant end, Locale locale) {
    double whole = (double) Duration.between(band.start(), band.high()).toMillis();
    double done = Duration.between(band.start(), end).toMillis() / whole;
    double from = Duration.between(band.start(), band.low()).toMillis() / whole;
    long percent = Math.round(100 * Math.max(0, Math.min(1, done)));
    double finishFrom = Math.rint(100 * from);
    return new TodayRow.Progress(
        (double) percent, finishFrom, 100 - finishFrom, say("today.progress", locale, percent));
  }

  private String comeBack(PlannedFinish.Finish band, Instant now, Locale locale) {
    return band.high().isAfter(now)
        ? say("today.next.come-back", locale, shown.moment(band.high()))
        : say("today.next.overdue", locale, shown.moment(band.high()));
  }

  private static Duration staleAfter(Log log) {
    int rows = log.time().size();
    double interval_s = rows < 2 ? 0 : log.time().duration_s() / (rows - 1);
    Duration threeIntervals = Duration.ofMillis(Math.round(3_000 * interval_s));
    return threeIntervals.compareTo(STALE) > 0 ? threeIntervals : STALE;
  }

  private static Optional<Phase> lastPhase(Review review) {
    int phases = review.phases().size();
    return phases == 0 ? Optional.empty() : Optional.of(review.phases().get(phases - 1));
  }

  /**
   * The end of drying, once every sign of it has been seen: those of the whole load where there are
   * any, else those of the vessels. A probed vessel alone says nothing about the rest.
   */
  private static Optional<Instant> endOfDrying(Review review) {
    List<Endpoint> load =
        review.endpoints().stream().filter(endpoint -> endpoint.vessel().isEmpty()).toList();
    List<Endpoint> signs = load.isEmpty() ? review.endpoints() : load;
    return signs.stream().allMatch(Endpoint::reached)
        ? signs.stream().flatMap(sign -> sign.at().stream()).max(Instant::compareTo)
        : Optional.empty();
  }

  private Worst worst(Review review, Locale locale) {
    return review.findings().stream()
        .filter(TodayRows::matters)
        .findFirst()
        .map(
            finding ->
                new Worst(
                    finding.severity() == Finding.Severity.ALARM ? "stop" : "watch",
                    finding.kind().label()))
        .orElseGet(() -> new Worst("pass", say("today.worst.none", locale)));
  }

  private static boolean matters(Finding finding) {
    return finding.severity() != Finding.Severity.INFORMATION;
  }

  private static RunLink link(ReviewedRun run) {
    return new RunLink(run.run().id(), run.run().title());
  }

  private static String address(ReviewedRun run) {
    return "/runs/" + run.run().id();
  }

  private String say(String key, Locale locale, Object... with) {
    return words.getMessage(key, with, locale);
  }
}
