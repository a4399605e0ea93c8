package org.firnline.drying.recipe;

import java.util.List;

/**
 * One vessel under a schedule.
 *
 * @param ending how it ends
 * @param time of that end, s
 * @param warmest greatest temperature of any frozen point on the way
 * @param peakRate greatest vapor rate on the way
 * @param course from step to step
 */
public record ScheduledRun(
    Ending ending, double time, Extreme warmest, Extreme peakRate, List<Moment> course) {

  /** How a vessel under a schedule ends. */
  public enum Ending {
    /** The last ice is gone. */
    DRIES,
    /** Ice melts first. */
    MELTS,
    /** Ice is left when the time allowed is over. */
    UNFINISHED
  }

  /**
   * A greatest value.
   *
   * @param value SI
   * @param time at which it is reached, s
   */
  public record Extreme(double value, double time) {}

  /**
   * The vessel at one time.
   *
   * @param time s
   * @param depth dried depth, m
   * @param frontTemperature K
   * @param bottomTemperature K
   * @param rate kg/s
   */
  public record Moment(
      double time, double depth, double frontTemperature, double bottomTemperature, double rate) {

    /** Warmest frozen point, K. */
    public double warmest() {
      return Math.max(frontTemperature, bottomTemperature);
    }
  }

  public ScheduledRun {
    course = List.copyOf(course);
  }
}
