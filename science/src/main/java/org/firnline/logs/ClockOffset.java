package org.firnline.logs;

import java.time.Duration;
import java.util.Objects;
import org.firnline.logs.channel.Confidence;

/**
 * How two loggers' clocks stand to each other.
 *
 * @param file name of the log whose clock is judged
 * @param against name of the log it is judged by
 * @param ahead by how much the first is ahead; negative if it is behind
 * @param reason why, in words
 * @param confidence how sure; with low confidence the clocks were left as they are
 */
public record ClockOffset(
    String file, String against, Duration ahead, String reason, Confidence confidence) {
  public ClockOffset {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(against, "against");
    Objects.requireNonNull(ahead, "ahead");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(confidence, "confidence");
  }
}
