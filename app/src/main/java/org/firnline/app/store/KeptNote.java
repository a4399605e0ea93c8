package org.firnline.app.store;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something a person noted about a run. Exactly one of {@code at} and {@code at_s} is there.
 *
 * @param id its number
 * @param runId the run it belongs to
 * @param at when it happened, UTC
 * @param at_s when it happened, seconds since the log's first row, where nobody knows when that was
 * @param text what was noted
 * @param author who wrote it; empty where nobody signs in
 * @param written when it was written
 * @param withdrawn when it was withdrawn, if it was
 */
public record KeptNote(
    long id,
    long runId,
    Optional<Instant> at,
    OptionalDouble at_s,
    String text,
    String author,
    Instant written,
    Optional<Instant> withdrawn) {

  public KeptNote {
    if (at.isPresent() == at_s.isPresent()) {
      throw new IllegalArgumentException(
          "note " + id + " needs a time or seconds since the log's first row, not both");
    }
  }

  /** Seconds since a log's first row. */
  public double second(Instant firstRow) {
    return at.map(when -> Duration.between(firstRow, when).toMillis() / 1_000.0)
        .orElseGet(at_s::getAsDouble);
  }
}
