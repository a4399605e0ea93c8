package org.firnline.review;

import java.time.Instant;
import java.util.Objects;
import org.firnline.logs.channel.Confidence;

/**
 * A stretch of the run.
 *
 * @param name which phase
 * @param start first moment, UTC
 * @param end last moment, UTC; the start of the next phase or the end of the log
 * @param confidence how sure the boundaries are
 * @param reason what the boundaries were read from, in words
 */
public record Phase(Name name, Instant start, Instant end, Confidence confidence, String reason) {

  /** The phases of a run, in their order. */
  public enum Name {
    FREEZING("freezing"),
    EVACUATION("evacuation"),
    PRIMARY_DRYING("primary drying"),
    SECONDARY_DRYING("secondary drying"),
    BACKFILL("backfill");

    private final String label;

    Name(String label) {
      this.label = label;
    }

    /** The words shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public Phase {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(confidence, "confidence");
    Objects.requireNonNull(reason, "reason");
    if (end.isBefore(start)) {
      throw new IllegalArgumentException(
          "phase " + name.label() + " ends " + end + " before it starts " + start);
    }
  }

  /** Length of the phase in seconds. */
  public double duration_s() {
    return (end.toEpochMilli() - start.toEpochMilli()) / 1000.0;
  }
}
