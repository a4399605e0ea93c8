package org.firnline.app.planfile;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.evidence.Band;
import org.firnline.planning.CheckLine;
import org.firnline.planning.PlanAnswer;
import org.firnline.units.QuantityKind;

/** The answer to a plan for people at a terminal. */
public final class PlanReport {
  private static final int WIDTH = 92;

  private final Words words;
  private final CheckWords checks;
  private final Shown shown;

  public PlanReport(Words words, CheckWords checks) {
    this.words = words;
    this.checks = checks;
    this.shown = new Shown(ZoneOffset.UTC, words);
  }

  /** Lines ready to print. */
  public String of(AnsweredPlan plan) {
    PlanReading reading = plan.reading();
    List<String> lines = new ArrayList<>();
    lines.add(reading.input().orElseThrow().title());
    plan.answer().ifPresent(answer -> addAnswer(reading, answer, lines));
    return Quantities.plain(String.join(System.lineSeparator(), lines));
  }

  private void addAnswer(PlanReading reading, PlanAnswer answer, List<String> lines) {
    PlanInput input = reading.input().orElseThrow();
    lines.add("");
    lines.add(headline(input, answer));
    lines.add(hold(answer));
    lines.add("");
    List<String> figures = figures(answer);
    lines.addAll(figures);
    if (!figures.isEmpty()) {
      lines.add("");
    }
    lines.add(words.say("plan.checks"));
    for (CheckLine line : answer.checks()) {
      lines.addAll(
          TextTable.hanging(
              "  " + sign(line) + " " + checks.verdict(line), checks.sentence(line), 11, WIDTH));
    }
    lines.add("");
    lines.addAll(TextTable.hanging("", words.say("plan.checks.note"), 0, WIDTH));
  }

  /** Every default that was filled in, for the end of a report. */
  public List<String> assumptions(PlanReading reading) {
    List<String> lines = new ArrayList<>();
    if (!reading.assumptions().isEmpty()) {
      lines.add("");
      lines.add(words.say("plan.report.assumed"));
      lines.addAll(
          TextTable.of(
              reading.assumptions().stream()
                  .map(
                      filled ->
                          List.of("  " + filled.path(), filled.text(), filled.provenance().label()))
                  .toList()));
    }
    return lines;
  }

  private String headline(PlanInput input, PlanAnswer answer) {
    Band last = answer.prediction().lastTime_s();
    if (!Double.isFinite(last.best())) {
      return words.say("plan.headline.never");
    }
    Optional<Finish> finish = Finish.of(input, answer);
    return finish
        .map(when -> words.say("plan.headline.done", shown.localSpan(when.low(), when.high())))
        .orElseGet(
            () -> words.say("plan.headline.hours", shown.durations(last.low(), last.high())));
  }

  private String hold(PlanAnswer answer) {
    return words.say(
        answer.recommended() ? "plan.hold.recommended" : "plan.hold.chosen",
        Quantities.words(answer.hold().shelf_K(), QuantityKind.TEMPERATURE),
        Quantities.words(answer.hold().pressure_Pa(), QuantityKind.PRESSURE));
  }

  /** What does not dry has no times to show. */
  private List<String> figures(PlanAnswer answer) {
    if (!answer.prediction().dries()) {
      return List.of();
    }
    return TextTable.of(
        List.of(
            row("plan.report.last", answer.prediction().lastTime_s(), QuantityKind.TIME),
            row("plan.report.typical", answer.prediction().typicalTime_s(), QuantityKind.TIME),
            row(
                "plan.report.warmest",
                answer.prediction().warmestTemperature_K(),
                QuantityKind.TEMPERATURE),
            row(
                "plan.report.rate",
                answer.prediction().peakRate_kg_per_s(),
                QuantityKind.MASS_FLOW)));
  }

  private List<String> row(String key, Band band, QuantityKind kind) {
    return List.of(
        "  " + words.say(key),
        Quantities.words(band.best(), kind),
        words.say(
            "plan.between",
            Quantities.words(band.low(), kind),
            Quantities.words(band.high(), kind)));
  }

  private static String sign(CheckLine line) {
    return switch (line.verdict()) {
      case PASS -> "○";
      case WATCH -> "△";
      case STOP -> "■";
    };
  }
}
