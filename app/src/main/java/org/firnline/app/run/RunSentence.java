package org.firnline.app.run;

import java.time.Instant;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.Shown;
import org.firnline.logs.Log;
import org.firnline.review.Endpoint;
import org.firnline.review.Review;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** The picture of a run in a few words, for whoever cannot see it and for paper. */
@Component
class RunSentence {
  private final MessageSource words;

  RunSentence(MessageSource words) {
    this.words = words;
  }

  /** What the picture shows: length and phases, when the ice was gone, ranges, findings. */
  String of(Log log, Review review, LogClock clock, Locale locale) {
    String phases =
        review.phases().stream()
            .map(phase -> phase.name().label() + " " + Shown.duration(phase.duration_s()))
            .collect(Collectors.joining(", "));
    String length = Shown.duration(log.time().duration_s());
    String first =
        phases.isEmpty()
            ? say("run.summary.no-phases", locale, length)
            : say("run.summary.phases", locale, length, phases);
    String last = say("run.summary.findings", locale, review.findings().size());
    return Stream.of(first, iceGone(review, clock, locale), ranges(log, locale), last)
        .filter(sentence -> !sentence.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private String iceGone(Review review, LogClock clock, Locale locale) {
    Optional<Instant> last =
        review.endpoints().stream()
            .filter(endpoint -> endpoint.vessel().isEmpty())
            .flatMap(endpoint -> endpoint.at().stream())
            .max(Instant::compareTo)
            .or(
                () ->
                    review.endpoints().stream()
                        .map(Endpoint::at)
                        .flatMap(Optional::stream)
                        .max(Instant::compareTo));
    return last.map(at -> say("run.summary.ice-gone", locale, clock.moment(at))).orElse("");
  }

  /** "Temperatures −70.0 to 25.2 °C, pressures 7.9 to 1330 Pa." */
  private String ranges(Log log, Locale locale) {
    Map<PicturePane, double[]> ranges = new EnumMap<>(PicturePane.class);
    for (DrawnChannel drawn : DrawnChannel.of(log)) {
      double[] range =
          ranges.computeIfAbsent(
              drawn.pane(),
              pane -> new double[] {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY});
      Columns.of(log.time(), 0, log.time().size(), 1)
          .reduce(
              drawn.channel().series(),
              (low, high) -> {
                range[0] = low < range[0] ? low : range[0];
                range[1] = high > range[1] ? high : range[1];
              });
    }
    return ranges.entrySet().stream()
        .filter(pane -> pane.getValue()[0] <= pane.getValue()[1])
        .map(pane -> range(pane.getKey(), pane.getValue(), locale))
        .collect(Collectors.joining(" "));
  }

  private String range(PicturePane pane, double[] range, Locale locale) {
    return say("run.summary." + pane.key(), locale, pane.words(range[0]), pane.words(range[1]));
  }

  private String say(String key, Locale locale, Object... with) {
    return words.getMessage(key, with, locale);
  }
}
