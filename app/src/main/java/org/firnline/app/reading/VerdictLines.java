package org.firnline.app.reading;

import java.util.ArrayList;
import java.util.List;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.review.EndVerdict;
import org.firnline.review.Review;

/** The verdicts on the ice, for people at a terminal. */
final class VerdictLines {
  private VerdictLines() {}

  static List<String> of(Review review, LogClock clock, Words words, int width) {
    List<String> lines = new ArrayList<>();
    if (review.verdicts().isEmpty()) {
      return lines;
    }
    lines.add(words.say("run.verdict"));
    for (EndVerdict verdict : review.verdicts()) {
      String who = verdict.vessel().orElseGet(() -> words.say("run.endpoint.load"));
      String when =
          verdict
              .at()
              .map(
                  at ->
                      words.say(
                          "run.verdict.gone",
                          clock.moment(at),
                          clock.moment(verdict.low().orElseThrow()),
                          clock.moment(verdict.high().orElseThrow()),
                          verdict.confidence().label()))
              .orElseGet(
                  () ->
                      words.say(
                          "run.verdict.other",
                          verdict.state().label(),
                          verdict.confidence().label()));
      lines.addAll(TextTable.hanging("  ", who + ": " + when + " " + reasons(verdict), 4, width));
    }
    lines.add("");
    return lines;
  }

  private static String reasons(EndVerdict verdict) {
    return String.join("; ", verdict.reasons()) + ".";
  }
}
