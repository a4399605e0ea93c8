package org.firnline.review;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A planned step beside what the dryer did.
 *
 * @param planned what was asked for
 * @param state how the two compare
 * @param start when the step began, UTC; empty if the log does not show it
 * @param end when it ended, UTC; the end of the log if it was still under way
 * @param shelf_K shelf temperature of its hold, K; empty if not logged
 * @param ramp_K_per_s how fast the shelf got there, K/s; empty without a change of the shelf
 * @param pressure_Pa chamber pressure of its hold, Pa; empty if not logged
 * @param differences what differs and what cannot be compared, in words
 */
public record JudgedStep(
    PlannedStep planned,
    State state,
    Optional<Instant> start,
    Optional<Instant> end,
    OptionalDouble shelf_K,
    OptionalDouble ramp_K_per_s,
    OptionalDouble pressure_Pa,
    List<String> differences) {

  /** How a step compares with its plan. */
  public enum State {
    /** Settings as planned. */
    AS_PLANNED("as planned"),
    /** Settings as planned, but much longer or shorter. */
    OTHER_DURATION("other duration"),
    /** Shelf, pressure or ramp differ. */
    OTHER_SETTINGS("other settings"),
    /** Still going when the log ends. */
    UNDER_WAY("under way when the log ends"),
    /** The log does not show it. */
    NOT_SEEN("not seen in this log");

    private final String label;

    State(String label) {
      this.label = label;
    }

    /** The words shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public JudgedStep {
    Objects.requireNonNull(planned, "planned");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(shelf_K, "shelf_K");
    Objects.requireNonNull(ramp_K_per_s, "ramp_K_per_s");
    Objects.requireNonNull(pressure_Pa, "pressure_Pa");
    differences = List.copyOf(differences);
    if (start.isPresent() != end.isPresent()) {
      throw new IllegalArgumentException(
          "step " + planned.name() + ": start and end must be present or absent together");
    }
  }

  /** How long the step took, s; empty if the log does not show it. */
  public OptionalDouble duration_s() {
    return start.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Duration.between(start.get(), end.orElseThrow()).toMillis() / 1_000.0);
  }
}
