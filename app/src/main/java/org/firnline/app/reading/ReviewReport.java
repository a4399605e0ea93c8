package org.firnline.app.reading;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.evidence.Problem;
import org.firnline.logs.Log;
import org.firnline.logs.Reading;
import org.firnline.review.Endpoint;
import org.firnline.review.Finding;
import org.firnline.review.Phase;
import org.firnline.review.Review;

/** What a log says, for people at a terminal. */
public final class ReviewReport {
  private static final int WIDTH = 92;

  private final Words words;
  private final Shown shown;

  public ReviewReport(Words words, Shown shown) {
    this.words = words;
    this.shown = shown;
  }

  /** Lines ready to print. */
  public String of(Reading reading, Optional<Review> review) {
    List<String> lines = new ArrayList<>();
    lines.add(reading.fileName());
    lines.addAll(account(reading));
    LogClock clock = clock(reading);
    review.ifPresent(answer -> lines.addAll(happened(answer, clock)));
    return Quantities.plain(String.join(System.lineSeparator(), lines));
  }

  private LogClock clock(Reading reading) {
    Instant start = reading.log().flatMap(Log::start).orElse(Instant.EPOCH);
    boolean known = reading.log().map(log -> log.basis().startKnown()).orElse(true);
    return new LogClock(start, known, shown);
  }

  private List<String> account(Reading reading) {
    List<String> lines = new ArrayList<>();
    for (Problem problem : reading.problems()) {
      lines.addAll(TextTable.hanging("  ■", problem.sentence(), 4, WIDTH));
    }
    reading.log().ifPresent(log -> lines.add("  " + spanOf(log)));
    lines.add(
        "  "
            + words.say(
                "run.account.rows.text",
                reading.rows().read(),
                reading.rows().kept(),
                reading.rows().flagged(),
                reading.rows().setAside(),
                reading.rows().rejected()));
    reading
        .log()
        .ifPresent(
            log ->
                lines.addAll(
                    TextTable.of(
                        log.channels().stream()
                            .map(
                                channel ->
                                    List.of(
                                        "  " + channel.name(),
                                        channel.role().label(),
                                        channel.unit()))
                            .toList())));
    reading
        .questions()
        .forEach(
            question ->
                lines.addAll(
                    TextTable.hanging(
                        "  ?",
                        question.text()
                            + " "
                            + words.say("run.account.assumed", question.assumed()),
                        4,
                        WIDTH)));
    return lines;
  }

  private String spanOf(Log log) {
    Instant start = log.start().orElse(Instant.EPOCH);
    return log.basis().startKnown()
        ? shown.span(start, log.end().orElse(start)) + " " + shown.zone().getId()
        : words.say("run.start-unknown", Shown.duration(log.time().duration_s()));
  }

  private List<String> happened(Review review, LogClock clock) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(words.say("run.phases"));
    lines.addAll(TextTable.of(review.phases().stream().map(phase -> phase(phase, clock)).toList()));
    lines.add("");
    lines.add(words.say("run.endpoints"));
    lines.addAll(
        TextTable.of(review.endpoints().stream().map(end -> endpoint(end, clock)).toList()));
    lines.add("");
    lines.addAll(VerdictLines.of(review, clock, words, WIDTH));
    lines.addAll(StepLines.of(review.steps(), clock, words, WIDTH));
    lines.add(words.say("run.findings"));
    if (review.findings().isEmpty()) {
      lines.addAll(TextTable.hanging("  ", words.say("run.findings.none"), 2, WIDTH));
    }
    for (Finding finding : review.findings()) {
      lines.add(
          "  "
              + sign(finding)
              + " "
              + finding.kind().label()
              + ", "
              + clock.span(finding.start(), finding.end()));
      lines.addAll(TextTable.hanging("", finding.text(), 4, WIDTH));
    }
    return lines;
  }

  private static List<String> phase(Phase phase, LogClock clock) {
    return List.of(
        "  " + phase.name().label(),
        clock.moment(phase.start()),
        Shown.duration(phase.duration_s()));
  }

  private List<String> endpoint(Endpoint endpoint, LogClock clock) {
    return List.of(
        "  " + endpoint.vessel().orElseGet(() -> words.say("run.endpoint.load")),
        endpoint.method().label(),
        endpoint.at().map(clock::moment).orElseGet(() -> words.say("run.endpoint.not-reached")),
        endpoint.confidence().label());
  }

  private static String sign(Finding finding) {
    return switch (finding.severity()) {
      case ALARM -> "■";
      case WATCH -> "△";
      case INFORMATION -> "○";
    };
  }
}
