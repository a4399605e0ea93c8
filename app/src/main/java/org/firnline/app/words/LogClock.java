package org.firnline.app.words;

import java.time.Duration;
import java.time.Instant;

/**
 * Times in a log: by the clock, or since its first row where the log does not say when it began.
 *
 * @param start first row
 * @param known whether the file says when that was
 * @param shown how clock times are shown
 */
public record LogClock(Instant start, boolean known, Shown shown) {

  /** "Wed 5 Mar 14:32" or "after 12 h 20 min". */
  public String moment(Instant at) {
    return known ? shown.moment(at) : shown.sinceStart(since(at));
  }

  /** "Wed 5 Mar 14:32 to 16:10" or "after 12 h 20 min to 14 h". */
  public String span(Instant from, Instant to) {
    return known ? shown.span(from, to) : shown.sinceStart(since(from), since(to));
  }

  private String since(Instant at) {
    return Shown.duration((double) Duration.between(start, at).toSeconds());
  }
}
