package org.firnline.review;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What happened in a run.
 *
 * @param phases in time order
 * @param endpoints per probed vessel and for the load, in time order of the channels
 * @param verdicts what all methods together say: the load first, then each probed vessel; empty for
 *     a log too short to judge
 * @param excursions above the critical temperature
 * @param findings most severe first, then in time order
 * @param steps every planned step beside what happened; empty without a plan
 * @param criticalTemperature_K the limit that was used, K; empty if none is known
 * @param criticalTemperatureSource where that limit comes from, in words; empty if none is known
 */
public record Review(
    List<Phase> phases,
    List<Endpoint> endpoints,
    List<EndVerdict> verdicts,
    List<Excursion> excursions,
    List<Finding> findings,
    List<JudgedStep> steps,
    OptionalDouble criticalTemperature_K,
    String criticalTemperatureSource) {
  public Review {
    phases = List.copyOf(phases);
    endpoints = List.copyOf(endpoints);
    verdicts = List.copyOf(verdicts);
    steps = List.copyOf(steps);
    excursions = List.copyOf(excursions);
    findings = List.copyOf(findings);
    Objects.requireNonNull(criticalTemperature_K, "criticalTemperature_K");
    Objects.requireNonNull(criticalTemperatureSource, "criticalTemperatureSource");
  }
}
