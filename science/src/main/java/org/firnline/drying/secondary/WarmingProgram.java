package org.firnline.drying.secondary;

import java.util.List;
import org.firnline.drying.recipe.Track;

/**
 * A shelf that warms at a steady rate and then stays.
 *
 * @param start temperature at time 0, K; positive
 * @param target temperature after the ramp, K; positive
 * @param ramp rate whatever its direction, K/s; positive, infinite for a step
 */
public record WarmingProgram(double start, double target, double ramp) {

  public WarmingProgram {
    if (!(start > 0) || !(target > 0) || !(ramp > 0)) {
      throw new IllegalArgumentException(
          "warming from "
              + start
              + " K to "
              + target
              + " K at "
              + ramp
              + " K/s: all must be positive");
    }
  }

  /** Length of the ramp, s. */
  public double rampTime() {
    return start == target ? 0 : Math.abs(target - start) / ramp;
  }

  /** The program as a track, its target held for ever. */
  public Track track() {
    return rampTime() == 0
        ? Track.constant(target)
        : Track.through(List.of(new Track.Point(0, start), new Track.Point(rampTime(), target)));
  }
}
