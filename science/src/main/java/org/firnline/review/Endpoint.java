package org.firnline.review;

import java.time.Instant;
import java.util.List;
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
    GAUGE_RATIO_END("gauge ratio end"),
    /** The gauge ratio reaches the level it keeps, above one while dry product gives off water. */
    GAUGE_RATIO_SETTLED("gauge ratio settled"),
    /** A measured vapor rate falls to the level it keeps. */
    VAPOR_RATE("vapor rate"),
    /** The dew point in the chamber falls to the level it keeps. */
    DEW_POINT("dew point"),
    /** The collector, warmed by the vapor, gets back to its cold. */
    COLLECTOR("collector recovery"),
    /** The pressure no longer rises when the valve to the collector is shut. */
    PRESSURE_RISE_TEST("pressure-rise test"),
    /** The weight stays the same. */
    WEIGHT("constant weight");

    private final String label;

    /** Whether it shows the last ice of a whole load, not of one vessel or only a share of it. */
    boolean endsLoad() {
      return switch (this) {
        case PRODUCT_THERMOMETER, SURFACE_THERMOMETER, GAUGE_RATIO_ONSET, GAUGE_RATIO_MIDPOINT ->
            false;
        default -> true;
      };
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

  /** A method that sees the whole load and found no end. */
  static Endpoint ofLoadNotReached(String channel, Method method, String why) {
    return notReached(List.of(), channel, method, why);
  }

  /** A thermometer whose vessel shows no end. */
  static Endpoint ofVesselNotReached(String vessel, Method method, String why) {
    return notReached(List.of(vessel), vessel, method, why);
  }

  private static Endpoint notReached(
      List<String> vessel, String channel, Method method, String why) {
    return new Endpoint(
        vessel.stream().findFirst(),
        channel,
        method,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Confidence.MEDIUM,
        why);
  }

  /** Whether the end was reached in this log. */
  public boolean reached() {
    return at.isPresent();
  }
}
