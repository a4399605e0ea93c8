package org.firnline.review;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/**
 * When a vessel or the load ran out of ice, by one method.
 *
 * @param vessel the probed vessel, named after its channel; empty for the whole load
 * @param channel the channel it was read from; two names joined by " / " for a gauge ratio
 * @param method how it was read
 * @param at best value, UTC; empty if it was not reached in this log
 * @param low earliest credible moment; empty if not reached
 * @param high latest credible moment; empty if not reached
 * @param confidence how sure
 * @param note what the method saw, or why there is no answer, in words
 */
public record Endpoint(
    Optional<String> vessel,
    String channel,
    Method method,
    Optional<Instant> at,
    Optional<Instant> low,
    Optional<Instant> high,
    Confidence confidence,
    String note) {

  /** How an end of drying was read. */
  public enum Method {
    /** The product thermometer leaves the ice and settles at the shelf. */
    PRODUCT_THERMOMETER("product thermometer"),
    /** The glass of a flask warms to the room. */
    SURFACE_THERMOMETER("surface thermometer"),
    /** On a dryer without pressure control: the pressure falls to the level it keeps. */
    PRESSURE_FALL("pressure fall"),
    GAUGE_RATIO_ONSET("gauge ratio onset"),
    GAUGE_RATIO_MIDPOINT("gauge ratio midpoint"),
    GAUGE_RATIO_END("gauge ratio end");

    private final String label;

    /** Whether it shows the last ice of a whole load, not of one vessel or only a share of it. */
    boolean endsLoad() {
      return this == PRESSURE_FALL || this == GAUGE_RATIO_END;
    }

    Method(String label) {
      this.label = label;
    }

    /** The words shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public Endpoint {
    Objects.requireNonNull(vessel, "vessel");
    Objects.requireNonNull(channel, "channel");
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    Objects.requireNonNull(confidence, "confidence");
    Objects.requireNonNull(note, "note");
    if (at.isPresent() != low.isPresent() || at.isPresent() != high.isPresent()) {
      throw new IllegalArgumentException(
          "endpoint of " + channel + ": at, low and high must be present or absent together");
    }
  }

  /** Whether the end was reached in this log. */
  public boolean reached() {
    return at.isPresent();
  }
}
