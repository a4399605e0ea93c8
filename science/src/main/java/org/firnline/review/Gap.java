package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.logs.channel.TimeAxis;
import org.firnline.review.signal.Grid;

/**
 * A stretch without rows.
 *
 * @param before last row before it
 * @param after first row behind it
 * @param length_s its length in seconds
 */
record Gap(int before, int after, double length_s) {
  private static final double TIMES_USUAL = 3;
  private static final double AT_LEAST_S = 120;

  /** Steps longer than three usual ones and two minutes. */
  static List<Gap> of(TimeAxis time) {
    double limit = Math.max(TIMES_USUAL * Grid.usualStep_s(time), AT_LEAST_S);
    List<Gap> gaps = new ArrayList<>();
    for (int i = 1; i < time.size(); i++) {
      double step = (time.epochMillis(i) - time.epochMillis(i - 1)) / 1000.0;
      if (step > limit) {
        gaps.add(new Gap(i - 1, i, step));
      }
    }
    return gaps;
  }
}
