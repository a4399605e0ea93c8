package org.firnline.review;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What happened in a run.
 *
 * @param phases in time order
 * @param endpoints per probed vessel and for the load, in time order of the channels
 * @param excursions above the critical temperature
 * @param findings most severe first, then in time order
 * @param criticalTemperature_K the limit that was used, K; empty if none is known
 * @param criticalTemperatureSource where that limit comes from, in words; empty if none is known
 */
public record Review(
    List<Phase> phases,
    List<Endpoint> endpoints,
    List<Excursion> excursions,
    List<Finding> findings,
    OptionalDouble criticalTemperature_K,
    String criticalTemperatureSource) {
  public Review {
    phases = List.copyOf(phases);
    endpoints = List.copyOf(endpoints);
    excursions = List.copyOf(excursions);
    findings = List.copyOf(findings);
    Objects.requireNonNull(criticalTemperature_K, "criticalTemperature_K");
    Objects.requireNonNull(criticalTemperatureSource, "criticalTemperatureSource");
  }
}
