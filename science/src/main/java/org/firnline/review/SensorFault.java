package org.firnline.review;

import java.util.Objects;

/**
 * A stretch in which a thermometer tells nothing about what it touches.
 *
 * @param trace the thermometer
 * @param stretch from when to when
 * @param seen what it shows, in words
 */
record SensorFault(Trace trace, Stretch stretch, String seen) {
  SensorFault {
    Objects.requireNonNull(trace, "trace");
    Objects.requireNonNull(stretch, "stretch");
    Objects.requireNonNull(seen, "seen");
  }
}
