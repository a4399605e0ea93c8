package org.firnline.drying;

import java.util.List;

/**
 * A pressure read at one time.
 *
 * @param time s from any beginning
 * @param pressure Pa; positive
 */
public record PressureSample(double time, double pressure) {

  public PressureSample {
    if (!Double.isFinite(time) || !(pressure > 0) || Double.isInfinite(pressure)) {
      throw new IllegalArgumentException(
          "a pressure of " + pressure + " Pa at " + time + " s was never read");
    }
  }

  /**
   * Refuses what is no series.
   *
   * @param least how many samples the question needs
   * @throws IllegalArgumentException if there are fewer, or times do not rise
   */
  public static void requireSeries(List<PressureSample> samples, int least) {
    if (samples.size() < least) {
      throw new IllegalArgumentException(
          samples.size() + " pressure samples are too few; at least " + least + " are needed");
    }
    for (int i = 1; i < samples.size(); i++) {
      if (!(samples.get(i).time() > samples.get(i - 1).time())) {
        throw new IllegalArgumentException(
            "sample " + (i + 1) + " at " + samples.get(i).time() + " s is out of order");
      }
    }
  }
}
