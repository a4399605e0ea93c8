package org.firnline.drying.cycle;

/**
 * A sensor that stops telling the truth for a while.
 *
 * @param kind channel
 * @param number of the watched vessel; 0 for channels that exist once
 * @param way how it fails
 * @param start s
 * @param end s; after {@code start}
 */
public record SensorFailure(
    LoggedChannel.Kind kind, int number, Way way, double start, double end) {

  /** How a sensor fails. */
  public enum Way {
    /** No value at all, as of a broken wire. */
    OPEN,
    /** The last value before it failed, again and again. */
    STUCK
  }

  public SensorFailure {
    if (!(start < end)) {
      throw new IllegalArgumentException(
          "a sensor failure from " + start + " s to " + end + " s cannot be");
    }
  }

  boolean concerns(LoggedChannel.Kind channel, int vessel, double time_s) {
    return kind == channel && number == vessel && time_s >= start && time_s < end;
  }
}
