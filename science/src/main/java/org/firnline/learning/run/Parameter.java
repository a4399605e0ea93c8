package org.firnline.learning.run;

import java.util.Locale;

/** What is learned from a run, in the order of the fit. All are positive but the offset. */
public enum Parameter {
  /** K_v at the mean pressure of the readings, W/(m2 K). */
  HEAT_TRANSFER,
  /** R_0, m/s. */
  INITIAL_RESISTANCE,
  /** A_1, 1/s. */
  RESISTANCE_GROWTH,
  /** A_2, 1/m. */
  RESISTANCE_LEVELING,
  /** What the thermometer reads too much, K; a nuisance, not a result. */
  THERMOMETER_OFFSET;

  /** Its stable name for programs and bundles, such as "heat-transfer". */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the fit works with its logarithm. */
  boolean isLogarithmic() {
    return this != THERMOMETER_OFFSET;
  }
}
