package org.firnline.logs.stamp;

import java.util.List;
import java.util.Objects;
import org.firnline.logs.channel.Confidence;

/**
 * In which order a file writes its dates.
 *
 * @param order the order, or the one assumed while a person has not chosen
 * @param open the orders that remain possible; one if the file settles it
 * @param reason why, in words
 * @param confidence how sure
 */
public record DateOrderVerdict(
    DateFields.Order order, List<DateFields.Order> open, String reason, Confidence confidence) {
  public DateOrderVerdict {
    Objects.requireNonNull(order, "order");
    open = List.copyOf(open);
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(confidence, "confidence");
  }

  /** Whether only a person can tell. */
  public boolean isTied() {
    return open.size() > 1;
  }
}
