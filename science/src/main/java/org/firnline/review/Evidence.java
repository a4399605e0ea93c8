package org.firnline.review;

import java.time.Instant;
import java.util.Objects;

/**
 * Where in the log a finding can be seen.
 *
 * @param channel the channel to look at
 * @param start from when, UTC
 * @param end until when, UTC
 * @param seen what it shows, in words with numbers
 */
public record Evidence(String channel, Instant start, Instant end, String seen) {
  public Evidence {
    Objects.requireNonNull(channel, "channel");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(seen, "seen");
  }
}
