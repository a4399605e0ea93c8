package org.firnline.review;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is known beside the log.
 *
 * @param criticalTemperature_K the product's critical temperature (collapse or eutectic), K; empty
 *     to take it from the log's own preamble if it names one
 * @param plan the steps the run was to follow; empty if unknown
 */
public record ReviewContext(OptionalDouble criticalTemperature_K, List<PlannedStep> plan) {
  public ReviewContext {
    Objects.requireNonNull(criticalTemperature_K, "criticalTemperature_K");
    plan = List.copyOf(plan);
    if (criticalTemperature_K.isPresent()
        && !(criticalTemperature_K.getAsDouble() > 150
            && criticalTemperature_K.getAsDouble() < 320)) {
      throw new IllegalArgumentException(
          "critical temperature "
              + criticalTemperature_K.getAsDouble()
              + " K: must lie between 150 K and 320 K; give kelvin, not °C");
    }
  }

  /**
   * The one pressure the plan asks for in primary drying, Pa; NaN if it asks for none or several.
   */
  double plannedPressure_Pa() {
    double[] asked =
        plan.stream()
            .filter(step -> step.phase().underVacuum())
            .flatMapToDouble(step -> step.pressure_Pa().stream())
            .distinct()
            .toArray();
    return asked.length == 1 ? asked[0] : Double.NaN;
  }

  /** Nothing is known beside the log. */
  public static ReviewContext none() {
    return new ReviewContext(OptionalDouble.empty(), List.of());
  }

  /** Only the critical temperature is known, K. */
  public static ReviewContext withCriticalTemperature(double criticalTemperature_K) {
    return new ReviewContext(OptionalDouble.of(criticalTemperature_K), List.of());
  }
}
