package org.firnline.review;

import java.util.Objects;
import org.firnline.logs.channel.Channel;
import org.firnline.review.signal.Signal;

/**
 * A channel on the review's time grid.
 *
 * @param channel the channel
 * @param signal its values on the grid, SI
 */
record Trace(Channel channel, Signal signal) {
  Trace {
    Objects.requireNonNull(channel, "channel");
    Objects.requireNonNull(signal, "signal");
  }

  String name() {
    return channel.name();
  }
}
