package org.firnline.bench;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The page about speed, made from measurements and nothing else.
 *
 * @param machine where they were made
 * @param date when, as the caller says it
 */
record PerformancePage(Machine machine, String date) {
  private static final String FIRNLINE = "firnline";
  private static final String BASELINE = "baseline";

  /** The page for these measurements, in the form of Markdown. */
  String of(List<Measured> measurements) {
    List<String> types = measurements.stream().map(Measured::type).distinct().sorted().toList();
    String rows =
        types.stream().map(type -> row(type, measurements)).collect(Collectors.joining("\n"));
    String traps = types.stream().map(PerformancePage::trap).collect(Collectors.joining("\n"));
    return """
        # How fast

        Written by `./firnline bench` from its measurements; not by hand. Absolute figures belong to
        one machine, the ratio travels: both sides were measured in the same run.

        Machine: %s. Day: %s. A load above the number of cores means that others were at work and the
        intervals are wide.

        | question | counted | Firnline | baseline | ratio | the baseline is |
        |---|---|---|---|---|---|
        %s

        Figures are per second, with the half width of the 99.9 %% interval. A ratio above 1 means
        that Firnline is the faster.

        ## Traps, and what was done against them
        %s

        To repeat: `./firnline bench` (all, rewrites this page), or
        `./firnline bench --only LogReading` (one question, prints only).
        """
        .formatted(machine.described(), date, rows, traps);
  }

  private static String row(String type, List<Measured> measurements) {
    Question question = question(type);
    Measured ours = find(type, FIRNLINE, measurements);
    Measured theirs = find(type, BASELINE, measurements);
    return String.join(
        " | ",
        "| " + question.asks(),
        question.counts(),
        figure(ours, question.perCall()),
        figure(theirs, question.perCall()),
        digits(ours.perSecond() / theirs.perSecond()),
        question.baseline() + " |");
  }

  private static String trap(String type) {
    Question question = question(type);
    return "- *" + question.asks() + "* " + question.trap();
  }

  private static Measured find(String type, String method, List<Measured> measurements) {
    return measurements.stream()
        .filter(measured -> measured.type().equals(type) && measured.method().equals(method))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(type + "." + method + " was not measured"));
  }

  private static Question question(String type) {
    try {
      Question question = Class.forName(type).getAnnotation(Question.class);
      if (question == null) {
        throw new IllegalArgumentException(type + " has no @Question");
      }
      return question;
    } catch (ClassNotFoundException missing) {
      throw new IllegalArgumentException(type + " was measured and is gone", missing);
    }
  }

  private static String figure(Measured measured, double perCall) {
    return digits(measured.perSecond() * perCall) + " ± " + digits(measured.doubt() * perCall);
  }

  /** Three digits, in thin groups of three where there are more. */
  private static String digits(double value) {
    if (Double.isNaN(value)) {
      return "unknown";
    }
    if (value < 1000) {
      return String.format(Locale.ROOT, "%.3g", value);
    }
    double step = Math.pow(10, Math.floor(Math.log10(value)) - 2);
    return String.format(Locale.ROOT, "%,.0f", Math.round(value / step) * step).replace(",", " ");
  }
}
