package org.firnline.review;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/**
 * What all methods together say about the ice of a vessel or of the load.
 *
 * @param vessel the probed vessel, named after its channel; empty for the whole load
 * @param state whether the ice is gone
 * @param at best value for the end of ice, UTC; empty unless the ice is gone
 * @param low nine chances in ten lie between this and {@code high}; empty unless the ice is gone
 * @param high latest credible moment; empty unless the ice is gone
 * @param confidence how sure
 * @param reasons why, in plain words, the weightiest first; never empty
 */
public record EndVerdict(
    Optional<String> vessel,
    State state,
    Optional<Instant> at,
    Optional<Instant> low,
    Optional<Instant> high,
    Confidence confidence,
    List<String> reasons) {

  /** Whether the ice is gone. */
  public enum State {
    ICE_GONE("ice gone"),
    ICE_LEFT("ice left"),
    CANNOT_TELL("cannot tell");

    private final String label;

    State(String label) {
      this.label = label;
    }

    /** The words shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public EndVerdict {
    Objects.requireNonNull(vessel, "vessel");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(confidence, "confidence");
    reasons = List.copyOf(reasons);
    boolean all = at.isPresent() && low.isPresent() && high.isPresent();
    boolean none = at.isEmpty() && low.isEmpty() && high.isEmpty();
    if (state == State.ICE_GONE ? !all : !none) {
      throw new IllegalArgumentException(
          "verdict " + state.label() + ": a time and its band belong to \"ice gone\" alone");
    }
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException("a verdict needs a reason");
    }
  }

  /** A verdict on the whole load that gives no time. */
  static EndVerdict ofLoad(State state, Confidence confidence, List<String> reasons) {
    return untimed(List.of(), state, confidence, reasons);
  }

  /** A verdict on a probed vessel that gives no time. */
  static EndVerdict ofVessel(
      String vessel, State state, Confidence confidence, List<String> reasons) {
    return untimed(List.of(vessel), state, confidence, reasons);
  }

  private static EndVerdict untimed(
      List<String> vessel, State state, Confidence confidence, List<String> reasons) {
    return new EndVerdict(
        vessel.stream().findFirst(),
        state,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        confidence,
        reasons);
  }
}
