package org.firnline.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
          new PowerCutRule(),
          new ContradictionRule(),
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
          List.of(),
          limit.limit_K(),
          limit.source());
    }
    Run whole = Run.of(log);
    List<SensorFault> faults = SensorFaults.find(whole);
    Facts facts = FactFinder.find(whole.without(faults), faults, context, limit);
    List<Endpoint> endpoints = new ArrayList<>();
    facts.ends().forEach(end -> endpoints.add(end.endpoint()));
    endpoints.addAll(facts.loadEnds());
    List<Finding> findings = new ArrayList<>();
    for (FindingRule rule : rules) {
      findings.addAll(rule.find(facts));
    }
    findings = new ArrayList<>(OneProblem.of(findings));
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
        Estimates.of(facts),
        limit.limit_K(),
        limit.source());
  }
}
