package org.firnline.logs;

import java.util.Objects;
import org.firnline.logs.channel.Confidence;

/**
 * Something the file does not say outright.
 *
 * @param what what was guessed: "encoding", "unit of p1" ...
 * @param value what it was taken to be
 * @param reason why
 * @param confidence how sure
 * @param choice name of the choice that changes it: "encoding", "delimiter", "decimalMark",
 *     "dateOrder", "zone", "start", "clockNeverChanges", or "column:" and the header as written
 */
public record Guess(
    String what, String value, String reason, Confidence confidence, String choice) {
  public Guess {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(confidence, "confidence");
    Objects.requireNonNull(choice, "choice");
  }
}
