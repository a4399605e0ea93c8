package org.firnline.review;

import java.util.OptionalDouble;
import org.firnline.logs.channel.Role;
import org.firnline.matter.Water;

/** Whether each probed vessel kept frozen through an interruption, in words. */
final class WarmUpWords {
  private WarmUpWords() {}

  /** Every thermometer's verdict between two points, and a word on the vessels without one. */
  static String vessels(Facts facts, int from, int to) {
    StringBuilder text = new StringBuilder();
    for (Trace trace : facts.run().all(Role.PRODUCT)) {
      double peak = trace.signal().median(5).quantileIn(from, to + 1, 1);
      text.append(vessel(trace.name(), peak, facts.limit().limit_K())).append(' ');
    }
    return text.append(ReviewWords.say("warm.unprobed")).toString();
  }

  /**
   * One vessel's verdict.
   *
   * @param warmest_K warmest value seen, K; NaN if none was seen
   * @param limit_K critical temperature, K, if known
   */
  static String vessel(String name, double warmest_K, OptionalDouble limit_K) {
    if (Double.isNaN(warmest_K)) {
      return ReviewWords.say("warm.unknown", name);
    }
    String warmest = Spoken.temperature(warmest_K);
    if (warmest_K >= Water.TRIPLE_POINT_TEMPERATURE) {
      return ReviewWords.say("warm.thawed", name, warmest);
    }
    if (limit_K.isEmpty()) {
      return ReviewWords.say("warm.frozen", name, warmest);
    }
    return warmest_K < limit_K.getAsDouble()
        ? ReviewWords.say("warm.below", name, warmest)
        : ReviewWords.say("warm.above", name, warmest);
  }
}
