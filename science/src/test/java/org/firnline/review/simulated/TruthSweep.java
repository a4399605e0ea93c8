package org.firnline.review.simulated;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.firnline.drying.cycle.CycleSchedule;
import org.firnline.drying.gauge.EndMarks;
import org.firnline.review.EndVerdict;
import org.firnline.review.Endpoint;
import org.firnline.review.Finding;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;

/** Reviews many healthy simulated runs and keeps every answer beside its truth. */
final class TruthSweep {
  static final String LOAD_BY_GAUGES = "verdict on the load, both gauges";
  static final String LOAD_BY_THERMOMETERS = "verdict on the load, thermometers alone";

  private final Map<String, List<Answer>> answers = new TreeMap<>();
  private final Map<String, List<Answer>> boundaries = new TreeMap<>();
  private final List<String> alarms = new ArrayList<>();

  /**
   * One answer.
   *
   * @param run number of the draw
   * @param error_s answer less truth, s
   * @param primary_s length of primary drying, s
   * @param inBand whether the stated band holds the truth
   */
  record Answer(long run, double error_s, double primary_s, boolean inBand) {
    double share() {
      return Math.abs(error_s) / primary_s;
    }
  }

  static TruthSweep of(int runs) {
    TruthSweep sweep = new TruthSweep();
    for (int number = 0; number < runs; number++) {
      Logged logged = Logged.values()[number % Logged.values().length];
      sweep.add(new RunDraw(number, logged).draw());
    }
    return sweep;
  }

  private void add(SimulatedRun run) {
    Review review = new Reviewer().review(run.log(), ReviewContext.none());
    for (Finding finding : review.findings()) {
      if (finding.severity() != Finding.Severity.INFORMATION) {
        alarms.add("run " + run.number() + " " + run.logged() + ": " + finding.text());
      }
    }
    review.endpoints().forEach(end -> add(run, end));
    review.verdicts().stream()
        .filter(verdict -> verdict.vessel().isEmpty())
        .forEach(verdict -> add(run, verdict));
    if (run.logged().hasPressure()) {
      review.phases().forEach(phase -> add(run, phase));
    }
  }

  private void add(SimulatedRun run, Endpoint end) {
    EndMarks marks = run.marks();
    double last = run.run().lastEndOfIce();
    double truth =
        switch (end.method()) {
          case PRODUCT_THERMOMETER ->
              run.endOfIce(Integer.parseInt(end.channel().replaceAll("\\D", "")) - 1);
          case GAUGE_RATIO_ONSET -> marks.onset().orElse(Double.NaN);
          case GAUGE_RATIO_MIDPOINT -> marks.midpoint().orElse(Double.NaN);
          case GAUGE_RATIO_END -> marks.end().orElse(Double.NaN);
          default -> last;
        };
    boolean alone = run.logged() == Logged.ONE_CHANNEL;
    if (end.reached() && !Double.isNaN(truth)) {
      keep(
          answers,
          end.method().label() + (alone ? ", no other channel" : ""),
          new Answer(
              run.number(),
              SimulatedRun.second(end.at().orElseThrow()) - truth,
              run.primary_s(),
              holds(Stream.concat(end.low().stream(), end.high().stream()).toList(), truth)));
    }
  }

  private void add(SimulatedRun run, EndVerdict verdict) {
    double truth = run.run().lastEndOfIce();
    String what = run.logged().hasBothGauges() ? LOAD_BY_GAUGES : LOAD_BY_THERMOMETERS;
    double at = verdict.at().map(SimulatedRun::second).orElse(Double.POSITIVE_INFINITY);
    keep(
        answers,
        what,
        new Answer(
            run.number(),
            at - truth,
            run.primary_s(),
            holds(Stream.concat(verdict.low().stream(), verdict.high().stream()).toList(), truth)));
  }

  private void add(SimulatedRun run, Phase phase) {
    CycleSchedule schedule = run.run().schedule();
    double truth =
        switch (phase.name()) {
          case FREEZING -> 0;
          case EVACUATION -> schedule.evacuation();
          case PRIMARY_DRYING -> run.vacuum_s();
          case SECONDARY_DRYING -> schedule.secondary();
          case BACKFILL -> schedule.backfill();
        };
    boolean noShelf = run.logged() == Logged.GAUGES_ONLY;
    boolean guessed = noShelf && phase.name() == Phase.Name.SECONDARY_DRYING;
    double error = SimulatedRun.second(phase.start()) - truth;
    keep(
        boundaries,
        phase.name().label() + (guessed ? ", no shelf" : ""),
        new Answer(run.number(), error, run.primary_s(), true));
  }

  private static boolean holds(List<Instant> band, double truth) {
    return band.size() == 2
        && SimulatedRun.second(band.get(0)) <= truth
        && SimulatedRun.second(band.get(1)) >= truth;
  }

  private static void keep(Map<String, List<Answer>> where, String what, Answer answer) {
    where.computeIfAbsent(what, any -> new ArrayList<>()).add(answer);
  }

  List<String> alarms() {
    return alarms;
  }

  List<Answer> answers(String what) {
    return answers.getOrDefault(what, List.of());
  }

  Map<String, List<Answer>> boundaries() {
    return boundaries;
  }

  static double median(List<Answer> answers) {
    double[] sorted = answers.stream().mapToDouble(Answer::share).sorted().toArray();
    return sorted[sorted.length / 2];
  }

  static double worst(List<Answer> answers) {
    return answers.stream().mapToDouble(Answer::share).max().orElseThrow();
  }

  static double coverage(List<Answer> answers) {
    return answers.stream().filter(Answer::inBand).count() / (double) answers.size();
  }

  /** Every method with its count, median and worst error and the share of bands that hold. */
  String table() {
    StringBuilder table = new StringBuilder();
    answers.forEach(
        (what, list) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "%-42s n %3d  median %.2f %%  worst %.2f %%  in band %.1f %%%n",
                    what,
                    list.size(),
                    100 * median(list),
                    100 * worst(list),
                    100 * coverage(list))));
    boundaries.forEach(
        (what, list) ->
            table.append(
                String.format(
                    Locale.ROOT,
                    "start of %-33s n %3d  worst %.0f s%n",
                    what,
                    list.size(),
                    list.stream().mapToDouble(a -> Math.abs(a.error_s())).max().orElse(0))));
    alarms.forEach(alarm -> table.append(alarm).append(System.lineSeparator()));
    return table.toString();
  }
}
