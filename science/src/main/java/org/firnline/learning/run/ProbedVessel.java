package org.firnline.learning.run;

import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ThermalMass;

/**
 * One vessel with a thermometer in a run, as the fit needs it. Time 0 is when the chamber pressure
 * first fell to where ice sublimes.
 *
 * @param name of the thermometer
 * @param slab its frozen product
 * @param mass heat that it stores
 * @param schedule shelf and chamber pressure as they were
 * @param productStart bottom temperature at time 0, K
 * @param readings of the thermometer while ice covers it, in time order; at least six
 * @param end when its ice was gone; empty if that is not known
 */
public record ProbedVessel(
    String name,
    Slab slab,
    ThermalMass mass,
    Schedule schedule,
    double productStart,
    List<TemperatureReading> readings,
    Optional<EndOfIce> end) {

  private static final int LEAST_READINGS = 6;

  /**
   * A reading, usually a mean over some minutes.
   *
   * @param time s
   * @param temperature K; positive
   */
  public record TemperatureReading(double time, double temperature) {}

  /**
   * When the last ice was gone.
   *
   * @param time s; positive
   * @param doubt one standard deviation, s; positive
   */
  public record EndOfIce(double time, double doubt) {

    public EndOfIce {
      if (!(time > 0) || !(doubt > 0)) {
        throw new IllegalArgumentException("an end of ice at " + time + " s ± " + doubt + " s");
      }
    }
  }

  public ProbedVessel {
    readings = List.copyOf(readings);
    if (readings.size() < LEAST_READINGS) {
      throw new IllegalArgumentException(
          name
              + " has "
              + readings.size()
              + " readings over ice; a fit needs "
              + LEAST_READINGS
              + " or more");
    }
  }

  /** Mean chamber pressure at the readings, Pa. */
  public double meanPressure() {
    return readings.stream()
        .mapToDouble(reading -> schedule.pressure().at(reading.time()))
        .average()
        .orElseThrow();
  }
}
