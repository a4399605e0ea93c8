package org.firnline.drying.freezing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.firnline.drying.recipe.Track;

/**
 * Freezing of one vessel on a shelf whose temperature changes along straight lines.
 *
 * <p>Stages: the liquid cools as one mass; at the nucleation temperature ice appears and warms the
 * rest to the freezing point at once; a front moves up from the bottom (one-sided Plank); the
 * frozen mass cools as one, with a third of the layer's resistance in its way.
 *
 * <p>Assumes one freezing point for all ice, no sensible heat of the ice behind the moving front (6
 * % of the latent heat at 20 K), no heat from above. Thawing is not followed: a front may step back
 * while the shelf is warm, but product that was frozen through must stay frozen.
 *
 * <p>Valid: layers up to about 2 cm on a shelf at atmospheric pressure.
 *
 * <p>Source: closed forms of each stage, derivation in docs/science.md; front by Plank as in {@link
 * Plank1913}.
 */
public final class VesselFreezing {

  /**
   * The course along a shelf program.
   *
   * @param shelf shelf temperature over time, K
   * @param start_K product temperature at time 0, above {@code nucleation_K}
   * @param nucleation_K temperature at which ice appears, at most the freezing point
   * @param times at which states are wanted, s; rising, none negative, at least one
   */
  public FreezingCourse course(
      FreezingVessel vessel, Track shelf, double start_K, double nucleation_K, List<Double> times) {
    requireOrder(vessel, start_K, nucleation_K, times);
    FreezingProgress progress = FreezingProgress.liquid(vessel, start_K, nucleation_K);
    double[] wanted = times.stream().mapToDouble(Double::doubleValue).toArray();
    double end = wanted[wanted.length - 1];
    double[] stops =
        DoubleStream.concat(DoubleStream.of(wanted), DoubleStream.of(shelf.bends()))
            .filter(time -> time >= 0 && time <= end)
            .sorted()
            .distinct()
            .toArray();
    double now = 0;
    List<FreezingMoment> moments = new ArrayList<>(wanted.length);
    for (double stop : stops) {
      advance(progress, now, stop, shelf);
      now = stop;
      if (Arrays.binarySearch(wanted, stop) >= 0) {
        moments.add(progress.moment(stop, shelf.at(stop)));
      }
    }
    return new FreezingCourse(moments, known(progress.nucleation()), known(progress.frozen()));
  }

  private static void requireOrder(
      FreezingVessel vessel, double start_K, double nucleation_K, List<Double> times) {
    if (!(nucleation_K <= vessel.freezingPoint()) || !(start_K > nucleation_K)) {
      throw new IllegalArgumentException(
          "start "
              + start_K
              + " K, freezing point "
              + vessel.freezingPoint()
              + " K and nucleation "
              + nucleation_K
              + " K are out of order");
    }
    if (times.isEmpty() || !(times.get(0) >= 0)) {
      throw new IllegalArgumentException("times must begin at 0 or later");
    }
    for (int i = 1; i < times.size(); i++) {
      if (!(times.get(i) > times.get(i - 1))) {
        throw new IllegalArgumentException("time " + times.get(i) + " s is out of order");
      }
    }
  }

  private static void advance(FreezingProgress progress, double from, double to, Track shelf) {
    double slope = to > from ? slope(from, to, shelf) : 0;
    progress.advance(from, to - from, shelf.at(from), shelf.at(from) + slope * (to - from));
  }

  /** From the middle, so that a step at the end does not count. */
  private static double slope(double from, double to, Track shelf) {
    double middle = (from + to) / 2;
    return (shelf.at(middle) - shelf.at(from)) / (middle - from);
  }

  private static OptionalDouble known(double time_s) {
    return Double.isInfinite(time_s) ? OptionalDouble.empty() : OptionalDouble.of(time_s);
  }
}
