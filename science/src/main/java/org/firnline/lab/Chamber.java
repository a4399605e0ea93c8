package org.firnline.lab;

import java.util.OptionalDouble;

/**
 * The room that is evacuated.
 *
 * @param volume m3; empty if unknown
 * @param pumpingSpeed of the vacuum pump at drying pressure, m3/s; empty if unknown
 */
public record Chamber(OptionalDouble volume, OptionalDouble pumpingSpeed) {

  /** A chamber nobody has measured. */
  public static final Chamber UNKNOWN = new Chamber(OptionalDouble.empty(), OptionalDouble.empty());

  public Chamber {
    volume.ifPresent(known -> Check.positive(known, "chamber volume", "m3"));
    pumpingSpeed.ifPresent(known -> Check.positive(known, "pumping speed", "m3/s"));
  }

  /**
   * A chamber of known size and pump.
   *
   * @param volume m3
   * @param pumpingSpeed m3/s
   */
  public static Chamber of(double volume, double pumpingSpeed) {
    return new Chamber(OptionalDouble.of(volume), OptionalDouble.of(pumpingSpeed));
  }
}
