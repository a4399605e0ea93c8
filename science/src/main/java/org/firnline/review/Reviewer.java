package org.firnline.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.Log;

/** Says what happened in a run, from its log alone or with what is known beside it. Stateless. */
public final class Reviewer {
  private final List<FindingRule> rules =
      List.of(
          new TooWarmRule(),
          new ShelfOvershootRule(),
          new LeakRule(),
          new OpenedRule(),
          new VacuumLostRule(),
          new PressureFloatsRule(),
          new CollectorRule(),
          new GapRule(),
          new ClockRule(),
          new SensorRule(),
          new SensorOffsetRule(),
          new GaugesDisagreeRule(),
          new PressureRiseTestRule(),
          new SingleGaugeRule(),
          new CoarseGaugeRule(),
          new ProbedFirstRule(),
          new HeatTooEarlyRule(),
          new PlanRule(),
          new NotReachedRule());

  /**
   * Reviews a run.
   *
   * @param log the run's log
   * @param context what is known beside it
   */
  public Review review(Log log, ReviewContext context) {
    CriticalTemperature limit = CriticalTemperature.of(log, context);
    if (log.time().size() < 3) {
      return new Review(
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          limit.limit_K(),
          limit.source());
    }
    Run whole = Run.of(log);
    List<SensorFault> faults = SensorFaults.find(whole);
    Facts facts = facts(whole.without(faults), faults, context, limit);
    List<Endpoint> endpoints = new ArrayList<>();
    facts.ends().forEach(end -> endpoints.add(end.endpoint()));
    endpoints.addAll(facts.loadEnds());
    List<Finding> findings = new ArrayList<>();
    for (FindingRule rule : rules) {
      findings.addAll(rule.find(facts));
    }
    findings.sort(Comparator.comparing(Finding::severity).reversed().thenComparing(Finding::start));
    List<Phase> phases =
        facts
            .vacuum()
            .map(vacuum -> facts.timeline().phases(facts.run(), vacuum))
            .orElse(List.of());
    return new Review(
        phases,
        endpoints,
        Verdicts.of(facts),
        facts.excursions(),
        findings,
        new PlanJudge(facts).judge(),
        limit.limit_K(),
        limit.source());
  }

  private static Facts facts(
      Run run, List<SensorFault> faults, ReviewContext context, CriticalTemperature limit) {
    Optional<Vacuum> vacuum = Vacuum.of(run);
    List<Ramp> ramps = Ramp.of(run);
    int from = vacuum.map(Vacuum::working).orElse(0);
    int to = vacuum.map(Vacuum::vented).orElse(run.size());
    List<ThermometerEnds.End> ends = new ThermometerEnds(run).find(from, to);
    Optional<Integer> fall = run.hasShelf() ? Optional.empty() : LoadEnd.find(run, from, to);
    Timeline timeline =
        Timeline.of(
            run, vacuum.orElse(Vacuum.never(run.size())), ramps, ends, fall.stream().toList());
    GaugeRatio gauges = new GaugeRatio(run);
    Optional<GaugeRatio.Ratio> ratio = gauges.find(from, timeline.secondary());
    List<Endpoint> loadEnds = new ArrayList<>();
    vacuum.ifPresent(
        v -> ratio.ifPresent(r -> loadEnds.addAll(gauges.endpoints(r, v.working_Pa()))));
    fall.ifPresent(point -> loadEnds.add(LoadEnd.endpoint(run, point)));
    List<Excursion> excursions =
        limit.limit_K().isPresent()
            ? Excursions.find(
                run, ends, limit.limit_K().getAsDouble(), timeline.pump(), timeline.secondary())
            : List.of();
    List<PressureRise> rises =
        vacuum.isPresent() ? PressureRise.of(run, from, timeline.vented()) : List.of();
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
        faults,
        limit,
        excursions);
  }
}
