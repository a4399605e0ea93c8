package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Works out the facts about a run, in the order in which they need each other.
 *
 * @param run without the samples of failed sensors
 * @param faults those sensors
 * @param context what is known beside the log
 * @param limit the critical temperature
 * @param vacuum when the chamber is under vacuum; empty if never
 */
record FactFinder(
    Run run,
    List<SensorFault> faults,
    ReviewContext context,
    CriticalTemperature limit,
    Optional<Vacuum> vacuum) {

  static Facts find(
      Run run, List<SensorFault> faults, ReviewContext context, CriticalTemperature limit) {
    return new FactFinder(run, faults, context, limit, Vacuum.of(run)).find();
  }

  /** First point under vacuum. */
  private int from() {
    return vacuum.map(Vacuum::working).orElse(0);
  }

  private Facts find() {
    int from = from();
    int to = vacuum.map(Vacuum::vented).orElse(run.size());
    GaugeRatio gauges = new GaugeRatio(run);
    List<Ramp> ramps = Ramp.of(run);
    List<ThermometerEnds.End> ends = new ThermometerEnds(run, ramps).find(from, to);
    Optional<GaugeRatio.Ratio> whole = gauges.find(from, to);
    Optional<Integer> vaporAgain =
        run.hasShelf() ? Optional.empty() : whole.flatMap(VaporAgain::in);
    Optional<Integer> fall =
        run.hasShelf() || vaporAgain.isPresent() ? Optional.empty() : LoadEnd.find(run, from, to);
    Vacuum held = vacuum.orElse(Vacuum.never(run.size()));
    Timeline timeline =
        vaporAgain
            .map(again -> Timeline.of(run, held, again))
            .orElseGet(() -> Timeline.of(run, held, ramps, ends, fall.stream().toList()));
    Optional<GaugeRatio.Ratio> ratio =
        run.hasShelf()
            ? gauges.find(from, timeline.secondary())
            : whole.map(r -> r.until(vaporAgain.orElse(timeline.vented())));
    List<PressureRise> rises = rises(timeline);
    List<PressureRise> tests =
        rises.stream().filter(rise -> PressureRiseTestRule.isTest(run.grid(), rise)).toList();
    List<Endpoint> loadEnds = new ArrayList<>();
    vacuum.ifPresent(
        v -> ratio.ifPresent(r -> loadEnds.addAll(gauges.endpoints(r, v.working_Pa()))));
    fall.ifPresent(point -> loadEnds.add(LoadEnd.endpoint(run, point)));
    loadEnds.addAll(otherSigns(timeline, tests));
    return new Facts(
        run,
        context,
        vacuum,
        timeline,
        ramps,
        ends,
        ratio,
        loadEnds,
        rises,
        RiseTests.of(run, tests),
        faults,
        limit,
        excursions(timeline, ends));
  }

  private List<PressureRise> rises(Timeline timeline) {
    return vacuum.isPresent()
        ? PressureRise.of(run, from(), timeline.vented(), context.plannedPressure_Pa())
        : List.of();
  }

  private List<Endpoint> otherSigns(Timeline timeline, List<PressureRise> tests) {
    List<Endpoint> ends = new ArrayList<>();
    vacuum.ifPresent(v -> ends.addAll(new VaporFall(run).find(from(), timeline.secondary())));
    ends.addAll(WeightEnd.find(run.log()));
    RiseTests.end(run, tests, timeline.secondary()).ifPresent(ends::add);
    return ends;
  }

  private List<Excursion> excursions(Timeline timeline, List<ThermometerEnds.End> ends) {
    return limit.limit_K().isPresent()
        ? Excursions.find(
            run, ends, limit.limit_K().getAsDouble(), timeline.pump(), timeline.secondary())
        : List.of();
  }
}
