package org.firnline.review;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.firnline.logs.channel.Confidence;

/**
 * Something worth knowing about the run.
 *
 * @param kind what it is
 * @param severity how much it matters
 * @param start from when, UTC
 * @param end until when, UTC
 * @param confidence how sure
 * @param text the consequence, the number and what to do, in plain words to the person
 * @param causes likely causes, likeliest first; empty if there is nothing to explain
 * @param nextTime what to change next time, empty if nothing
 * @param evidence where it can be seen
 */
public record Finding(
    FindingKind kind,
    Severity severity,
    Instant start,
    Instant end,
    Confidence confidence,
    String text,
    List<String> causes,
    String nextTime,
    List<Evidence> evidence) {

  /** How much a finding matters. */
  public enum Severity {
    /** Good to know; nothing is wrong. */
    INFORMATION("information"),
    /** Look at it before you trust the run. */
    WATCH("watch"),
    /** The product or the machine may have suffered. */
    ALARM("alarm");

    private final String label;

    Severity(String label) {
      this.label = label;
    }

    /** The word shown to people and used in answers for machines. */
    public String label() {
      return label;
    }
  }

  public Finding {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(confidence, "confidence");
    Objects.requireNonNull(text, "text");
    causes = List.copyOf(causes);
    Objects.requireNonNull(nextTime, "nextTime");
    evidence = List.copyOf(evidence);
  }
}
