package org.firnline.review;

import java.util.Optional;
import org.firnline.review.signal.Signal;

/**
 * Where a log has no shelf: the warmth of secondary drying drives bound water out, so the gauge
 * ratio, which had fallen with the ice, rises once more.
 *
 * <p>Source: common practice, no published source.
 */
final class VaporAgain {
  private static final double FALLEN = 0.6;
  private static final double PLATEAU_AGAIN = 0.8;
  private static final double RISES = 0.1;
  private static final double LEAVES = 0.02;

  private VaporAgain() {}

  /** The point at which vapor comes again after the ice is gone; empty if it never does. */
  static Optional<Integer> in(GaugeRatio.Ratio ratio) {
    if (!ratio.hasPlateau()) {
      return Optional.empty();
    }
    Signal remaining = ratio.remaining();
    int to = ratio.to();
    int last = remaining.lastAbove(PLATEAU_AGAIN, ratio.from(), to);
    int fallen = remaining.firstBelow(FALLEN, Math.max(last, ratio.from()), to);
    if (last < 0 || fallen < 0) {
      return Optional.empty();
    }
    int lowest = fallen;
    int bump = -1;
    double rises = RISES + 4 * ratio.noise();
    for (int i = fallen; i < to && bump < 0; i++) {
      lowest = remaining.at(i) < remaining.at(lowest) ? i : lowest;
      bump = remaining.at(i) > remaining.at(lowest) + rises ? i : -1;
    }
    if (bump < 0) {
      return Optional.empty();
    }
    double leaves = remaining.at(lowest) + LEAVES + 2 * ratio.noise();
    return Optional.of(Math.max(lowest, remaining.lastBelow(leaves, lowest, bump)));
  }
}
