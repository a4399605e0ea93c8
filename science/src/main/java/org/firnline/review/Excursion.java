package org.firnline.review;

import java.time.Instant;
import java.util.Objects;

/**
 * A stretch in which a product thermometer stands above the critical temperature while its vessel
 * still holds ice.
 *
 * @param channel the thermometer
 * @param limit_K the critical temperature, K
 * @param start first moment above it, UTC
 * @param end last moment above it, UTC
 * @param peak_K warmest value, K
 * @param peakAt when it was warmest, UTC
 */
public record Excursion(
    String channel, double limit_K, Instant start, Instant end, double peak_K, Instant peakAt) {
  public Excursion {
    Objects.requireNonNull(channel, "channel");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(peakAt, "peakAt");
    if (!(peak_K >= limit_K)) {
      throw new IllegalArgumentException(
          "excursion of " + channel + ": peak " + peak_K + " K is not above the limit " + limit_K);
    }
  }

  /** Length in seconds. */
  public double duration_s() {
    return (end.toEpochMilli() - start.toEpochMilli()) / 1000.0;
  }
}
